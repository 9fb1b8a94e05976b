// Runs the built command line as a person would, and gives back what it said. It is built anew before the tests when its sources changed.
import { spawn } from 'node:child_process';
import { fileURLToPath } from 'node:url';

const root = fileURLToPath(new URL('../', import.meta.url));
export const main = fileURLToPath(new URL('../dist/node/cli/main.js', import.meta.url));

export interface Said {
  readonly code: number | null;
  readonly stdout: string;
  readonly stderr: string;
}

interface Setting {
  readonly input?: string;
  readonly env?: Readonly<Record<string, string>>;
}

/** @param line arguments as they are typed, parted by blanks */
export function umberpan(line: string, { input = '', env = {} }: Setting = {}): Promise<Said> {
  return run(process.execPath, [main, ...line.split(' ').filter(Boolean)], input, env);
}

/** Its output piped into another program. */
export function umberpanInto(line: string, next: string): Promise<Said> {
  return run('sh', ['-c', `"${process.execPath}" "${main}" ${line} | ${next}`], '', {});
}

function run(
  program: string,
  args: readonly string[],
  input: string,
  env: Readonly<Record<string, string>>,
): Promise<Said> {
  const { NO_COLOR: _, FORCE_COLOR: __, ...inherited } = process.env;
  return new Promise((resolve, reject) => {
    const child = spawn(program, args, { cwd: root, env: { ...inherited, ...env } });
    const said = { stdout: '', stderr: '' };
    child.stdout.setEncoding('utf8').on('data', (text) => {
      said.stdout += text;
    });
    child.stderr.setEncoding('utf8').on('data', (text) => {
      said.stderr += text;
    });
    child.on('error', reject);
    child.on('close', (code) => resolve({ code, ...said }));
    // A program that doesn't read its input may be gone before all of it is written.
    child.stdin.on('error', () => {});
    child.stdin.end(input);
  });
}
