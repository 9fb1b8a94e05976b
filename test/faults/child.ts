// Runs `work.ts` as a process of its own, which can be killed, and hears what it says line by line.
import { spawn } from 'node:child_process';
import { once } from 'node:events';
import { createInterface } from 'node:readline';
import { fileURLToPath } from 'node:url';

const work = fileURLToPath(new URL('./work.ts', import.meta.url));

export interface Child {
  /** What it said so far, without those of the start. */
  readonly lines: readonly string[];
  /** Waits until it has said so many lines, or has ended. */
  said(count: number): Promise<void>;
  signal(name: NodeJS.Signals): void;
  /** @returns what it wrote on standard error */
  end(name: 'SIGKILL' | 'SIGTERM'): Promise<string>;
}

/**
 * @param what of `work.ts`
 * @param before a program that runs it, such as strace with its options
 */
export async function startChild(what: string, folder: string, before: readonly string[] = []): Promise<Child> {
  const [program = '', ...args] = [...before, process.execPath, '--import', 'tsx', work, what, folder];
  const child = spawn(program, args);
  const ended = once(child, 'close');
  let isOver = false;
  let stderr = '';
  child.stderr.on('data', (text) => (stderr += text));
  child.stdin.end();
  const lines: string[] = [];
  const waiting = new Set<() => void>();
  const tell = () => {
    for (const wake of [...waiting]) wake();
  };
  const said = (count: number) =>
    new Promise<void>((resolve) => {
      const look = () => {
        if (lines.length < count && !isOver) return;
        waiting.delete(look);
        resolve();
      };
      waiting.add(look);
      look();
    });
  child.once('close', () => {
    isOver = true;
    tell();
  });
  createInterface({ input: child.stdout }).on('line', (line) => {
    lines.push(line);
    tell();
  });
  await said(1);
  // Its own id: strace, for one, hands no signal on.
  const pid = Number(/^ready (\d+)$/.exec(lines.shift() ?? '')?.[1]);
  if (!pid) throw new Error(`the process ended before it began: ${stderr}`);
  return {
    lines,
    said,
    signal: (name) => void process.kill(pid, name),
    async end(name) {
      process.kill(pid, name);
      await ended;
      return stderr;
    },
  };
}
