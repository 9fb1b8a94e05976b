import { cpSync, readdirSync } from 'node:fs';
import { join } from 'node:path';
import { setTimeout as pause } from 'node:timers/promises';
import { backupsIn } from '../../src/server/store/backup.ts';
import { startChild } from './child.ts';
import { type Fault, inFolder, numbersFrom } from './fault.ts';
import { fill, heldIn, lossesOf } from './filled.ts';

export const killedBackup: Fault = {
  name: 'kill -9 while a backup is made, and a start from a backup',
  how: 'a process writes and makes one backup after the other, and is killed at any moment; then the store is opened, and each backup is put in its place and opened',
  tries: { few: 1, many: 50 },
  make: async (tries) => {
    const random = numbersFrom(2);
    const seen = { backups: 0, parts: 0 };
    const losses: string[] = [];
    for (let round = 0; round < tries; round++) {
      await inFolder(async (folder) => {
        const ids = await fill(folder, 2000);
        const child = await startChild('backUp', folder);
        await child.said(2);
        await pause(random(400));
        await child.end('SIGKILL');
        const said = child.lines.map((line) => line.split(' '));
        const written = said.flatMap(([first = '', file]) => (file === undefined ? [first] : []));
        losses.push(...lossesOf(`round ${round}`, [...ids, ...written], await heldIn(folder)));
        const backups = join(folder, 'backups');
        seen.parts += readdirSync(backups).filter((name) => name.endsWith('.part')).length;
        const told = said.flatMap(([, file, last = '']) => (file === undefined ? [] : [{ file, last }]));
        for (const { file, last } of told) {
          if (!backupsIn(backups).includes(file)) continue;
          seen.backups++;
          const upTo = written.slice(0, written.indexOf(last) + 1);
          losses.push(...lossesOf(`round ${round}, from the backup`, [...ids, ...upTo], await startedFrom(file)));
        }
      });
    }
    return {
      tries,
      losses,
      seen: `${seen.backups} backups, each whole up to its beginning; ${seen.parts} half-made ones, not counted as any`,
    };
  },
};

function startedFrom(file: string) {
  return inFolder(async (folder) => {
    cpSync(file, join(folder, 'umberpan.sqlite'));
    return heldIn(folder);
  });
}
