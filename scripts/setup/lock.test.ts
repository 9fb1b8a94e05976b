import { spawnSync } from 'node:child_process';
import { existsSync, mkdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { setTimeout as pause } from 'node:timers/promises';
import { expect, it, vi } from 'vitest';
import { scratchFolder } from '../../test/testServer.ts';
import { withLock } from './lock.mjs';

it('lets one set-up work at a time', async () => {
  const lock = join(scratchFolder(), 'lock');
  const log: string[] = [];
  const work = (name: string) => async () => {
    log.push(`${name} begins`);
    await pause(50);
    log.push(`${name} ends`);
  };
  await Promise.all([withLock(work('a'), lock), withLock(work('b'), lock)]);
  expect(log).toEqual(['a begins', 'a ends', 'b begins', 'b ends']);
});

it('is free again after a failure', async () => {
  const lock = join(scratchFolder(), 'lock');
  await expect(withLock(() => Promise.reject(new Error('broken')), lock)).rejects.toThrow('broken');
  expect(existsSync(lock)).toBe(false);
});

it('clears the lock of a holder that is dead', async () => {
  const lock = join(scratchFolder(), 'lock');
  const dead = spawnSync(process.execPath, ['--version']).pid;
  mkdirSync(lock);
  writeFileSync(join(lock, 'pid'), String(dead));
  const work = vi.fn(async () => {});
  await withLock(work, lock);
  expect(work).toHaveBeenCalledOnce();
});
