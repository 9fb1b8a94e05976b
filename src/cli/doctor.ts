/** `umberpan doctor`: whether everything is as it needs to be, and what to do where it is not. */
import type { Command } from 'commander';
import { Option } from 'commander';
import { folderOf } from './dataOption.ts';
import { write, writeJson } from './output.ts';
import { port } from './port.ts';
import { stopping } from './stop.ts';

interface DoctorOptions {
  readonly data?: string;
  readonly port: number;
  readonly json?: true;
}

const marks = { well: 'ok  ', mind: 'mind', wrong: 'BAD ' } as const;

export function register(program: Command): void {
  program
    .command('doctor')
    .description('look at the data, the machine and the thermometers, and say what to do')
    .option('--data <folder>', 'the data folder (or UMBERPAN_DATA)')
    .addOption(new Option('--port <number>', 'where it listens').env('UMBERPAN_PORT').default(8327).argParser(port))
    .option('--json', 'as JSON')
    .addHelpText(
      'after',
      `
Nothing is changed.
Exit codes: 0 done, 1 something is bad, 2 misused.

Example:
  umberpan doctor --data ~/umberpan`,
    )
    .action(stopping(doctor));
}

async function doctor({ data, port, json }: DoctorOptions): Promise<void> {
  const { examine } = await import('../server/doctor/examine.ts');
  const findings = await examine(folderOf(data), port, Date.now());
  if (findings.some(({ state }) => state === 'wrong')) process.exitCode = 1;
  if (json) return writeJson({ findings });
  const width = Math.max(...findings.map(({ name }) => name.length));
  for (const { name, state, found, advice } of findings) {
    write(`${marks[state]}  ${name.padEnd(width)}  ${found}`);
    if (advice) write(`${' '.repeat(width + 8)}${advice}`);
  }
}
