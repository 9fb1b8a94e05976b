import { cpSync, existsSync, readdirSync } from 'node:fs';
import { join } from 'node:path';
import { setTimeout as pause } from 'node:timers/promises';
import { backupsIn } from '../../src/server/store/backup.ts';
import { proveCopy } from '../../src/server/store/proveCopy.ts';
import { openDatabase } from '../../src/server/store/sqlite.ts';
import { startChild } from './child.ts';
import { type Fault, inFolder, numbersFrom } from './fault.ts';
import { fill, heldIn, lossesOf } from './filled.ts';
import { laterMigrations } from './laterMigrations.ts';

const readings = 1500;

export const killedMigration: Fault = {
  name: 'kill -9 while the tables are brought up to date',
  how: `a store of ${readings} readings is opened by a later version with two changes to its tables, and that process is killed anywhere between its beginning and a little after its end; then it is opened again`,
  tries: { few: 2, many: 30 },
  make: (tries) =>
    inFolder(async (whole) => {
      const ids = await fill(whole, readings);
      const random = numbersFrom(1);
      let longestMs = 1.2 * (await timeOf(whole));
      const seen = { old: 0, new: 0, backups: 0, parts: 0 };
      const losses: string[] = [];
      for (let round = 0; round < tries; round++) {
        await inFolder(async (folder) => {
          cpSync(whole, folder, { recursive: true });
          const child = await startChild('migrate', folder);
          await pause(random(longestMs));
          await child.end('SIGKILL');
          const state = stateOf(folder);
          if (state === 'between') losses.push(`round ${round}: the tables are between two versions`);
          else seen[state]++;
          // So that kills keep falling on all of the way, however busy the machine is.
          longestMs *= state === 'new' ? 0.85 : 1.1;
          const backups = join(folder, 'backups');
          for (const file of backupsIn(backups)) {
            seen.backups++;
            if ((await proveCopy(file)).length > 0) losses.push(`round ${round}: ${file} is damaged`);
          }
          if (existsSync(backups)) seen.parts += readdirSync(backups).filter((name) => name.endsWith('.part')).length;
          losses.push(...lossesOf(`round ${round}`, ids, await heldIn(folder, laterMigrations)));
          if (stateOf(folder) !== 'new') losses.push(`round ${round}: the next start did not bring it up to date`);
        });
      }
      const { old, new: done, backups, parts } = seen;
      return {
        ...{ tries, losses },
        seen: `${old} times the tables were the old ones, ${done} times the new ones; ${backups} backups made before, all whole; ${parts} half-made ones, not counted as any`,
      };
    }),
};

/** How long it takes when nobody disturbs it, ms. */
function timeOf(whole: string): Promise<number> {
  return inFolder(async (folder) => {
    cpSync(whole, folder, { recursive: true });
    const child = await startChild('migrate', folder);
    const startMs = performance.now();
    await child.said(1);
    const tookMs = performance.now() - startMs;
    await child.end('SIGKILL');
    return tookMs;
  });
}

/** By every trace that the changes leave; the version's mark comes last, and is set by the next start if need be. */
function stateOf(folder: string): 'old' | 'new' | 'between' {
  const database = openDatabase(join(folder, 'umberpan.sqlite'));
  try {
    const count = (from: string) =>
      (database.prepare(`SELECT count(*) AS n FROM ${from}`).all([])[0] as { n: number }).n;
    const traces = [
      count(`pragma_table_info('event') WHERE name = 'mark'`),
      count(`sqlite_schema WHERE name = 'event_by_mark'`),
      count(`sqlite_schema WHERE name = 'marked'`),
      count(`kysely_migration WHERE name = '9000-mark-events'`),
      count(`kysely_migration WHERE name = '9001-index-marks'`),
    ];
    if (traces.every((each) => each === 0)) return 'old';
    return traces.every((each) => each === 1) && count('event WHERE mark IS NULL') === 0 ? 'new' : 'between';
  } finally {
    database.close();
  }
}
