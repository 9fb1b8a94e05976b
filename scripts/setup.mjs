// Makes a checkout ready: `node scripts/setup.mjs start` before the server, `node scripts/setup.mjs test` before the
// checks. Uses Node's built-ins alone, since nothing else is installed yet; does nothing that is already done.
import { buildOutputs } from './setup/build.mjs';
import { prepareChromium } from './setup/chromium.mjs';
import { withLock } from './setup/lock.mjs';
import { nodeVersionProblem } from './setup/node-version.mjs';
import { installPackages } from './setup/packages.mjs';
import { prepareSqlite } from './setup/sqlite.mjs';

const purpose = process.argv[2];
if (purpose !== 'start' && purpose !== 'test') {
  stop('Say what to set up: `node scripts/setup.mjs start` or `node scripts/setup.mjs test`.', 2);
}
const problem = nodeVersionProblem(process.versions.node);
if (problem) stop(problem, 1);

try {
  await withLock(async () => {
    await installPackages();
    await allToTheEnd([buildOutputs(), prepareSqlite(), purpose === 'test' && prepareChromium()]);
  });
} catch (error) {
  stop(error instanceof Error ? error.message : String(error), 1);
}

/**
 * Waits for every job even when one fails, so that none is cut off half-way; then reports the first failure.
 * @param {unknown[]} jobs
 */
async function allToTheEnd(jobs) {
  for (const result of await Promise.allSettled(jobs)) {
    if (result.status === 'rejected') throw result.reason;
  }
}

/**
 * @param {string} sentence
 * @param {number} code
 */
function stop(sentence, code) {
  console.error(sentence);
  process.exit(code);
}
