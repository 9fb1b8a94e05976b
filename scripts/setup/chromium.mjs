// The browser that some of the tests drive. UMBERPAN_CHROMIUM names it when it is not on the PATH.
import { aptInstall, mayInstall } from './apt.mjs';
import { onPath, say } from './run.mjs';

const NAMES = ['chromium', 'chromium-browser', 'google-chrome', 'google-chrome-stable'];

/** @returns {string | undefined} the browser's path */
export function findChromium() {
  return process.env['UMBERPAN_CHROMIUM'] || NAMES.map(onPath).find((path) => path !== undefined);
}

export async function prepareChromium() {
  if (findChromium()) return;
  if (mayInstall()) {
    say('installing Chromium for the tests in a browser');
    await aptInstall(['chromium']).catch((error) => say(error.message));
  }
  if (!findChromium()) {
    say('no Chromium found, so the tests in a browser are skipped; install it, or name it in UMBERPAN_CHROMIUM');
  }
}
