/** The built server as a process of its own, with a store of its own. */
import { spawn } from 'node:child_process';
import { once } from 'node:events';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';

const cli = join('dist', 'node', 'cli', 'main.js');

export interface ServedApp {
  readonly address: string;
  readonly pid: number;
}

/** Serves for as long as `use` takes, and clears away. */
export async function served(use: (app: ServedApp) => Promise<void>): Promise<void> {
  const data = mkdtempSync(join(tmpdir(), 'umberpan-bench-'));
  const child = spawn(process.execPath, [cli, 'serve', '--port', '0', '--data', data]);
  const ended = once(child, 'close');
  child.stderr.pipe(process.stderr);
  try {
    const address = await new Promise<string>((resolve, reject) => {
      child.stdout.on('data', (text) => {
        const found = /http:\S+/.exec(String(text));
        if (found) resolve(found[0]);
      });
      child.once('close', () => reject(new Error('the server ended')));
    });
    await use({ address, pid: child.pid ?? 0 });
  } finally {
    child.kill();
    await ended;
    rmSync(data, { recursive: true, force: true });
  }
}
