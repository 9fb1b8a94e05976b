// Installs the packages of the lock file, when they are not the ones installed already.
import { createHash } from 'node:crypto';
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { npm, root, say } from './run.mjs';
import { onceFor } from './stamp.mjs';

// No install scripts: the only package that needs one is SQLite's, and sqlite.mjs sees to it.
const QUIET = ['--ignore-scripts', '--no-audit', '--no-fund', '--prefer-offline', '--loglevel=error'];

export async function installPackages() {
  await onceFor(join(root, 'node_modules', '.setup-stamp'), hashOfWanted(), async () => {
    say('installing packages');
    try {
      await npm(['ci', ...QUIET]);
    } catch (error) {
      // A registry that does not serve every platform's build makes `npm ci` refuse a lock that this machine could use.
      say(`npm ci failed, trying npm install (${firstLine(error)})`);
      await npm(['install', '--no-save', ...QUIET]);
    }
  });
}

/** The lock and the dependencies asked for: a change to another part of package.json asks for no new install. */
function hashOfWanted() {
  const { dependencies, devDependencies } = JSON.parse(readFileSync(join(root, 'package.json'), 'utf8'));
  return createHash('sha256')
    .update(readFileSync(join(root, 'package-lock.json')))
    .update(JSON.stringify([dependencies, devDependencies]))
    .digest('hex');
}

/** @param {unknown} error */
function firstLine(error) {
  return String(error).split('\n').slice(0, 2).join(' ');
}
