import { randomUUID } from 'node:crypto';
import { readdirSync } from 'node:fs';
import { join } from 'node:path';
import { expect, it, onTestFinished } from 'vitest';
import { scratchFolder } from '../../../test/testServer.ts';
import { defaultKit } from '../../core/pan/kit.ts';
import { createKit } from '../store/kits.ts';
import { openStore, type Store } from '../store/store.ts';
import { keepBackups } from './keepBackups.ts';

const minuteMs = 60_000;
const hourMs = 3_600_000;
const dayMs = 24 * hourMs;

async function kept(folder = scratchFolder(), startMs = Date.UTC(2031, 4, 9, 18, 30)) {
  const store = await openStore(folder);
  let open = true;
  const close = async () => {
    if (open) await store.close();
    open = false;
  };
  onTestFinished(close);
  const clock = { ms: startMs };
  const warnings: string[] = [];
  const warn = (_: unknown, message: string) => warnings.push(message);
  const broken = { is: false };
  const backUp: Store['backUp'] = (reason, now) =>
    broken.is ? Promise.reject(new Error('no room')) : store.backUp(reason, now);
  const backups = keepBackups({ store: { ...store, backUp }, nowMs: () => clock.ms, warn });
  const write = () => createKit(store.db, randomUUID(), defaultKit, new Date(clock.ms));
  /** Lets time pass, looking each minute. */
  const pass = async (ms: number) => {
    for (const end = clock.ms + ms; clock.ms < end; ) {
      clock.ms += minuteMs;
      await backups.look();
    }
  };
  const reasons = () => {
    const names = readdirSync(folder).includes('backups') ? readdirSync(join(folder, 'backups')) : [];
    return names.toSorted().map((name) => name.replace(/^.*Z-|\.sqlite$/g, ''));
  };
  return { folder, store, backups, clock, warnings, broken, write, pass, reasons, close };
}

it('each day on which something was written ends in a backup, and no other day', async () => {
  const { write, pass, reasons } = await kept();
  await write();
  await pass(minuteMs);
  expect(reasons()).toEqual(['daily']);
  await write();
  await pass(23 * hourMs);
  expect(reasons()).toEqual(['daily']);
  await pass(2 * hourMs);
  expect(reasons()).toEqual(['daily', 'daily']);
  await pass(3 * dayMs);
  expect(reasons()).toEqual(['daily', 'daily']);
  await write();
  await pass(minuteMs);
  expect(reasons()).toEqual(['daily', 'daily', 'daily']);
});

it('a start counts the day from the newest backup that is there', async () => {
  const first = await kept();
  await first.write();
  await first.pass(minuteMs);
  await first.write();
  await first.close();
  const { pass, reasons } = await kept(first.folder, first.clock.ms + hourMs);
  await pass(22 * hourMs);
  expect(reasons()).toEqual(['daily']);
  await pass(2 * hourMs);
  expect(reasons()).toEqual(['daily', 'daily']);
});

it('a backup from a clock that was ahead does not put off the next ones', async () => {
  const first = await kept(scratchFolder(), Date.UTC(2040, 0, 1));
  await first.write();
  await first.pass(minuteMs);
  await first.close();
  const { write, pass, reasons } = await kept(first.folder);
  await write();
  await pass(dayMs + minuteMs);
  expect(reasons()).toHaveLength(2);
  await pass(hourMs);
  expect(reasons()).toHaveLength(2);
});

it('the start or the end of a cook is copied at once, and a day is counted from there', async () => {
  const { store, backups, write, pass, reasons, clock } = await kept();
  await write();
  backups.now('cook-begun');
  // Backups are made one after the other: this one ends after it.
  await store.backUp('other', new Date(clock.ms + 1));
  expect(reasons()).toEqual(['cook-begun', 'other']);
  await write();
  await pass(23 * hourMs);
  expect(reasons()).toHaveLength(2);
  await pass(hourMs);
  expect(reasons()).toEqual(['cook-begun', 'other', 'daily']);
});

it('cooks taken in one after the other are copied once, when no more come', async () => {
  const { backups, write, pass, clock, reasons } = await kept();
  await write();
  await pass(minuteMs);
  for (let file = 0; file < 30; file++) {
    backups.soon();
    await write();
    clock.ms += 30_000;
    await backups.look();
  }
  expect(reasons()).toEqual(['daily']);
  await pass(10 * minuteMs);
  expect(reasons()).toEqual(['daily', 'taken-in']);
});

it('a backup that fails is told, and tried again in an hour', async () => {
  const { broken, warnings, write, pass, reasons } = await kept();
  await write();
  broken.is = true;
  await pass(59 * minuteMs);
  expect(warnings).toEqual(['The backup was not made']);
  broken.is = false;
  await pass(5 * minuteMs);
  expect(reasons()).toEqual(['daily']);
});
