// Debian's packages, where this process may install them: nobody is asked for a password.
import { onPath, run } from './run.mjs';

export function mayInstall() {
  return process.getuid?.() === 0 && onPath('apt-get') !== undefined;
}

/** @param {string[]} packages */
export async function aptInstall(packages) {
  const install = () =>
    run('apt-get', ['install', '--yes', '--quiet', '--no-install-recommends', ...packages], {
      DEBIAN_FRONTEND: 'noninteractive',
    });
  try {
    await install();
  } catch {
    // The usual reason on a fresh machine: its list of packages is empty or old.
    await run('apt-get', ['update', '--quiet']);
    await install();
  }
}
