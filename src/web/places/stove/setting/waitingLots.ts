/** This browser's one queue of lots. From the first use of it on, what waits is sent whenever the server may be back. */
import { useSyncExternalStore } from 'react';
import { keep, kept } from '../../../parts/browserStorage.ts';
import { answerTo } from '../../../records/answer.ts';
import { onPassChange } from '../../../records/pass.ts';
import { createLotQueue } from './lotQueue.ts';

const key = 'umberpan.lots.waiting';
/** How often it is tried while something waits, ms. */
const everyMs = 5000;

const queue = createLotQueue({
  read: () => kept(key),
  write: (text) => keep(key, text),
  post: (id, lot) => answerTo('/api/lots', { method: 'POST', headers: { 'idempotency-key': id }, body: lot }),
});

/** Not all browsers send in the background, so it is tried while the page is open. */
function sendIfAny(): void {
  if (queue.state().waiting.some(({ refused }) => refused === undefined)) void queue.send();
}

setInterval(sendIfAny, everyMs);
addEventListener('online', sendIfAny);
onPassChange(sendIfAny);
document.addEventListener('visibilitychange', sendIfAny);
sendIfAny();

export const addLot = queue.add;
export const useWaitingLots = () => useSyncExternalStore(queue.subscribe, queue.state);
