import { describe, expect, it, onTestFinished } from 'vitest';
import { leaseWriter } from './leaseWriter.ts';
import { lockWriter } from './lockWriter.ts';
import type { Writer } from './writer.ts';

type Open = () => Promise<Writer>;

const times = { answerMs: 40, askMs: 150 };
const whoWrites = (tabs: readonly Writer[]) => tabs.map((tab) => tab.isHere());

/** Tabs that ask each other; a frozen one hears nothing. */
function byAsking(): Open {
  const name = crypto.randomUUID();
  return () =>
    leaseWriter(
      () => new BroadcastChannel(name),
      () => {},
      times,
    );
}

/** One lock as the Web Locks API has it: a queue, and stealing. */
function byLocks(): Open {
  type Waiting = { readonly work: () => unknown; readonly reject: (error: Error) => void };
  let held: Waiting | undefined;
  let queue: Waiting[] = [];
  const aborted = () => new DOMException('taken away', 'AbortError');
  const grant = () => {
    if (held) return;
    const next = queue.shift();
    if (next) hold(next);
  };
  const hold = (next: Waiting) => {
    held = next;
    void Promise.resolve(next.work()).then(() => {
      if (held !== next) return;
      held = undefined;
      grant();
    });
  };
  const request = (_: string, options: LockOptions, work: (lock: Lock | null) => unknown) =>
    new Promise<unknown>((resolve, reject) => {
      const lock = { name: 'cook', mode: 'exclusive' } as Lock;
      const waiting = { work: async () => resolve(await work(lock)), reject };
      if (options.ifAvailable && held) return resolve(work(null));
      if (options.steal) {
        held?.reject(aborted());
        return hold(waiting);
      }
      options.signal?.addEventListener('abort', () => {
        queue = queue.filter((other) => other !== waiting);
        reject(aborted());
      });
      queue.push(waiting);
      grant();
    });
  return () => lockWriter({ request } as unknown as LockManager, 'cook', () => {});
}

describe.each([
  ['asking each other', byAsking],
  ['a lock', byLocks],
])('of the tabs of a device, by %s,', (_, way) => {
  const opening = () => {
    const open = way();
    return async () => {
      const tab = await open();
      onTestFinished(() => tab.release());
      return tab;
    };
  };

  it('the first writes and the others read', async () => {
    const open = opening();
    const tabs = [await open(), await open(), await open()];
    expect(whoWrites(tabs)).toEqual([true, false, false]);
  });

  it('one takes over when it is asked to, and gives back the same way', async () => {
    const open = opening();
    const tabs = [await open(), await open()];
    await tabs[1].takeOver();
    await expect.poll(() => whoWrites(tabs)).toEqual([false, true]);
    await tabs[0].takeOver();
    await expect.poll(() => whoWrites(tabs)).toEqual([true, false]);
  });

  it('another goes on when the writer leaves', async () => {
    const open = opening();
    const tabs = [await open(), await open()];
    tabs[0].release();
    await expect.poll(() => whoWrites(tabs)).toEqual([false, true]);
  });

  it('one writes in the end when several open at once', async () => {
    const open = opening();
    const tabs = await Promise.all([open(), open(), open(), open()]);
    await expect.poll(() => whoWrites(tabs).filter(Boolean).length).toBe(1);
  });
});

it('without locks, a writer that is frozen and does not answer is passed over', async () => {
  const name = crypto.randomUUID();
  const frozen = await leaseWriter(
    () => {
      const channel = new BroadcastChannel(name);
      return { postMessage: (word) => channel.postMessage(word), close: () => channel.close(), onmessage: null };
    },
    () => {},
    times,
  );
  const other = await leaseWriter(
    () => new BroadcastChannel(name),
    () => {},
    times,
  );
  onTestFinished(() => [frozen, other].forEach((tab) => void tab.release()));
  expect(other.isHere()).toBe(true);
});
