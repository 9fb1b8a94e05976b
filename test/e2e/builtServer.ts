// Runs the built server as a person would, as a process of its own.
import { spawn } from 'node:child_process';
import { once } from 'node:events';
import { fileURLToPath } from 'node:url';
import { lanServerFlags, onLan } from './lan.ts';

export const cli = fileURLToPath(new URL('../../dist/node/cli/main.js', import.meta.url));

export interface BuiltServer {
  readonly address: string;
  /** Stops it where it is, with its connections open, and lets it go on. */
  freeze(): void;
  thaw(): void;
  /** Ends it with a signal and waits for its end; SIGKILL gives it no chance to tidy up. */
  end(signal: 'SIGTERM' | 'SIGKILL'): Promise<{ readonly code: number | null; readonly stderr: string }>;
}

/**
 * @param port the one that is free when not given; a server that comes back wants its former one
 * @param flags more of the command line
 * @param under a program, with its own command line, that runs it
 */
export async function startBuiltServer(
  data: string,
  port = 0,
  flags: readonly string[] = onLan ? lanServerFlags : [],
  under: readonly string[] = [],
): Promise<BuiltServer> {
  const [program = '', ...args] = [...under, process.execPath, cli, 'serve', '--port', String(port), '--data', data];
  const child = spawn(program, [...args, ...flags]);
  const ended = once(child, 'close');
  let stderr = '';
  child.stderr.on('data', (text) => (stderr += text));
  const address = await new Promise<string>((resolve, reject) => {
    let stdout = '';
    child.stdout.on('data', (text) => {
      stdout += text;
      const found = /https?:\S+/.exec(stdout);
      if (found) resolve(found[0]);
    });
    child.once('close', () => reject(new Error(`the server ended: ${stderr}`)));
  });
  return {
    address,
    freeze: () => void child.kill('SIGSTOP'),
    thaw: () => void child.kill('SIGCONT'),
    async end(signal) {
      child.kill(signal);
      const [code] = await ended;
      return { code, stderr };
    },
  };
}
