import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { canonicalJson } from '../../src/core/log/canonicalJson.ts';
import { beginCook } from '../../src/server/store/cooks.ts';
import { appendEvents } from '../../src/server/store/events.ts';
import { openStore } from '../../src/server/store/store.ts';
import { sampleCook } from '../sampleCook.ts';
import { type Fault, inFolder, numbersFrom } from './fault.ts';
import { heldIn } from './filled.ts';

const tServer = '2031-05-09T18:30:00.000Z';

export const damagedRow: Fault = {
  name: 'a damaged event in the file',
  how: 'in the closed file one byte of one event is changed, each event in its turn and then at random; the chain of hashes has to name that event and no other, and all the others have to be given back',
  tries: { few: 100, many: 2000 },
  make: (tries) =>
    inFolder(async (folder) => {
      const { cook, begun, events } = sampleCook(40);
      // Without its end, so that it is the cook under way.
      const all = events.filter(({ kind }) => kind !== 'ended');
      const { db, close } = await openStore(folder);
      await beginCook(db, begun, tServer);
      await appendEvents(
        db,
        cook,
        all.slice(1).map((event) => ({ event, tServer })),
      );
      await close();
      const file = join(folder, 'umberpan.sqlite');
      const whole = readFileSync(file);
      const random = numbersFrom(5);
      const losses: string[] = [];
      for (let round = 0; round < tries; round++) {
        const place = round < all.length ? round : random(all.length);
        writeFileSync(file, damaged(whole, canonicalJson(all[place]), random));
        const held = await heldIn(folder);
        const others = all.toSpliced(place, 1).map(({ id }) => id);
        if (String(held.damaged) !== String(place + 1))
          losses.push(`round ${round}: ${held.damaged} named, not ${place + 1}`);
        if (String(held.ids) !== String(others)) losses.push(`round ${round}: not all others given back`);
        writeFileSync(file, whole);
      }
      return { tries, losses, seen: `${tries - losses.length} of ${tries} found, by their places` };
    }),
};

function damaged(whole: Buffer, text: string, random: (below: number) => number): Buffer {
  // A long event goes on in further pages; its first bytes lie together.
  const all = Buffer.from(text);
  const content = whole.includes(all) ? all : all.subarray(0, 200);
  const [at, change] = [random(content.length), 1 + random(255)];
  const changed = Buffer.from(whole);
  // In every copy, as splitting a page leaves the old one behind in free space.
  for (let copy = whole.indexOf(content); copy >= 0; copy = whole.indexOf(content, copy + 1))
    changed[copy + at] ^= change;
  return changed;
}
