// Knows whether a job must be done again: a stamp file holds the hash of what the job was last done from.
import { createHash } from 'node:crypto';
import { mkdirSync, readdirSync, readFileSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';

/**
 * Hash of files and folders (folders with all that is in them), by name and content.
 * @param {string} base
 * @param {string[]} names relative to `base`; one that does not exist counts as empty
 * @param {(name: string) => boolean} [counts] whether a file matters
 */
export function hashOf(base, names, counts = () => true) {
  const hash = createHash('sha256');
  for (const name of names.flatMap((each) => filesIn(base, each)).filter(counts)) {
    hash
      .update(name)
      .update('\0')
      .update(readFileSync(join(base, name)))
      .update('\0');
  }
  return hash.digest('hex');
}

/**
 * Does the job unless the stamp says that it was done from the same inputs.
 * @param {string} stamp the stamp file
 * @param {string} hash of the inputs
 * @param {() => Promise<void>} job
 */
export async function onceFor(stamp, hash, job) {
  if (readOrEmpty(stamp) === hash) return;
  rmSync(stamp, { force: true });
  await job();
  mkdirSync(dirname(stamp), { recursive: true });
  writeFileSync(stamp, hash);
}

/**
 * @param {string} base
 * @param {string} name
 * @returns {string[]}
 */
function filesIn(base, name) {
  const stats = statSync(join(base, name), { throwIfNoEntry: false });
  if (!stats) return [];
  if (!stats.isDirectory()) return [name];
  return readdirSync(join(base, name))
    .sort()
    .flatMap((child) => filesIn(base, `${name}/${child}`));
}

/** @param {string} file */
function readOrEmpty(file) {
  try {
    return readFileSync(file, 'utf8');
  } catch {
    return '';
  }
}
