// One set-up at a time in a checkout: a folder as the lock, with the holder's pid in it; a dead holder's lock is cleared.
import { mkdirSync, readFileSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { setTimeout as pause } from 'node:timers/promises';
import { root, say } from './run.mjs';

const LOCK = join(root, '.cache', 'setup-lock');
/** A lock without a pid in it is being made; one that stays so for this long was left by a holder that died at once. */
const GRACE_MS = 2000;

/**
 * @param {() => Promise<void>} work
 * @param {string} [lock] the lock's folder
 */
export async function withLock(work, lock = LOCK) {
  mkdirSync(dirname(lock), { recursive: true });
  for (let waited = false; !take(lock); waited = true) {
    if (!waited) say('another set-up is at work here; waiting for it');
    await pause(200);
  }
  try {
    await work();
  } finally {
    rmSync(lock, { recursive: true, force: true });
  }
}

/** @param {string} lock */
function take(lock) {
  try {
    mkdirSync(lock);
    writeFileSync(join(lock, 'pid'), String(process.pid));
    return true;
  } catch (error) {
    if (/** @type {NodeJS.ErrnoException} */ (error).code !== 'EEXIST') throw error;
    if (isLeftBehind(lock)) rmSync(lock, { recursive: true, force: true });
    return false;
  }
}

/** @param {string} lock */
function isLeftBehind(lock) {
  try {
    const pid = Number(readFileSync(join(lock, 'pid'), 'utf8'));
    if (pid > 0) return !isAlive(pid);
    return Date.now() - statSync(lock).mtimeMs > GRACE_MS;
  } catch {
    const made = statSync(lock, { throwIfNoEntry: false })?.mtimeMs;
    return made !== undefined && Date.now() - made > GRACE_MS;
  }
}

/** @param {number} pid */
function isAlive(pid) {
  try {
    process.kill(pid, 0);
    return true;
  } catch (error) {
    return /** @type {NodeJS.ErrnoException} */ (error).code === 'EPERM';
  }
}
