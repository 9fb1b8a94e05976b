// Runs other programs quietly: their output is shown only when they fail.
import { spawn } from 'node:child_process';
import { existsSync } from 'node:fs';
import { delimiter, join } from 'node:path';
import { fileURLToPath } from 'node:url';

export const root = fileURLToPath(new URL('../../', import.meta.url));
const windows = process.platform === 'win32';

/**
 * Runs a program in the checkout and waits for its end.
 * @param {string} command
 * @param {string[]} args
 * @param {Record<string, string>} [env] added to this process's environment
 * @returns {Promise<void>} rejects with the program's output when it fails
 */
export function run(command, args, env = {}) {
  return new Promise((resolve, reject) => {
    const child = spawn(command, args, {
      cwd: root,
      env: { ...process.env, ...env },
      shell: windows && !command.includes('\\'),
      stdio: ['ignore', 'pipe', 'pipe'],
    });
    let output = '';
    child.stdout.on('data', (text) => (output += text));
    child.stderr.on('data', (text) => (output += text));
    child.on('error', reject);
    child.on('close', (code) => {
      if (code === 0) resolve();
      else reject(new Error(`${[command, ...args].join(' ')} failed (${code}):\n${output.trim()}`));
    });
  });
}

/**
 * Runs npm: the very one that started us, if one did.
 * @param {string[]} args
 * @param {Record<string, string>} [env]
 */
export function npm(args, env) {
  const own = process.env['npm_execpath'];
  return own?.endsWith('.js') ? run(process.execPath, [own, ...args], env) : run('npm', args, env);
}

/**
 * Where a program is on the PATH; undefined when it is not there.
 * @param {string} program
 */
export function onPath(program) {
  const names = windows ? [`${program}.exe`, `${program}.cmd`] : [program];
  for (const folder of (process.env['PATH'] ?? '').split(delimiter)) {
    const found = names.map((name) => join(folder, name)).find((path) => existsSync(path));
    if (folder && found) return found;
  }
  return undefined;
}

/**
 * Tells the person what takes time.
 * @param {string} sentence
 */
export function say(sentence) {
  console.error(`set-up: ${sentence}`);
}
