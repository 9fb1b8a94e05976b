import { setTimeout as pause } from 'node:timers/promises';
import { startChild } from './child.ts';
import { type Fault, inFolder, numbersFrom } from './fault.ts';
import { fill, heldIn, lossesOf } from './filled.ts';

export const killedCheckpoint: Fault = {
  name: 'kill -9 while the write-ahead log is moved into the file',
  how: 'a process writes and makes a checkpoint after every fifth event, and is killed at any moment; then the store is opened',
  tries: { few: 1, many: 20 },
  make: async (tries) => {
    const random = numbersFrom(3);
    let acknowledged = 0;
    const losses: string[] = [];
    for (let round = 0; round < tries; round++) {
      await inFolder(async (folder) => {
        const ids = await fill(folder, 100);
        const child = await startChild('checkpoint', folder);
        await child.said(1);
        await pause(random(300));
        await child.end('SIGKILL');
        acknowledged += child.lines.length;
        losses.push(...lossesOf(`round ${round}`, [...ids, ...child.lines], await heldIn(folder)));
      });
    }
    return { tries, losses, seen: `${acknowledged} events acknowledged, all there once` };
  },
};
