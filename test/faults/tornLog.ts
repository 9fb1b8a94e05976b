import { cpSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { runningCooks } from '../../src/server/store/cooks.ts';
import { appendEvents } from '../../src/server/store/events.ts';
import { openStore } from '../../src/server/store/store.ts';
import { sampleBodies, sampleDevice } from '../sampleCook.ts';
import { type Fault, inFolder, numbersFrom } from './fault.ts';
import { fill, heldIn } from './filled.ts';

const tServer = '2031-05-09T18:30:00.000Z';

export const tornLog: Fault = {
  name: 'torn write-ahead log, as power that fails may leave it',
  how: 'file and log are copied while the store is open; the log is cut off anywhere, or a byte of it is changed; then the copy is opened',
  tries: { few: 40, many: 1000 },
  make: (tries) =>
    inFolder(async (folder) => {
      const ids = await fill(folder, 20);
      const { file, wal, written } = await openWithLog(folder);
      const random = numbersFrom(4);
      const losses: string[] = [];
      let kept = 0;
      for (let round = 0; round < tries; round++) {
        await inFolder(async (copy) => {
          cpSync(file, join(copy, 'umberpan.sqlite'));
          const at = random(wal.length);
          const torn = Buffer.from(round % 2 ? wal : wal.subarray(0, at));
          if (round % 2) torn[at] ^= 1 + random(255);
          writeFileSync(join(copy, 'umberpan.sqlite-wal'), torn);
          const held = await heldIn(copy);
          const all = [...ids, ...written];
          const isPrefix = held.ids.length >= ids.length && held.ids.every((id, place) => id === all[place]);
          if (!isPrefix || held.damaged.length > 0) losses.push(`round ${round}: not whole up to some event`);
          kept += held.ids.length - ids.length;
        });
      }
      const mean = Math.round(kept / tries);
      return {
        tries,
        losses,
        seen: `each time whole up to some event, on average ${mean} of the ${written.length} in the log`,
      };
    }),
};

/** What a power failure would leave: the file and its log, before anything tidied up. */
async function openWithLog(folder: string) {
  const { db, close } = await openStore(folder);
  const [{ id: cook }] = await runningCooks(db);
  const device = sampleDevice(cook);
  const written: string[] = [];
  for (let second = 0; second < 60; second++) {
    const event = device.make('reading', sampleBodies.reading, second);
    await appendEvents(db, cook, [{ event, tServer }]);
    written.push(event.id);
  }
  const file = join(folder, 'before.sqlite');
  cpSync(join(folder, 'umberpan.sqlite'), file);
  const wal = readFileSync(join(folder, 'umberpan.sqlite-wal'));
  await close();
  return { file, wal, written };
}
