/** The command line: one file a command, each of which registers itself. */
import { createRequire } from 'node:module';
import { Command, CommanderError } from 'commander';
import { register as check } from './check.ts';
import { register as colour } from './colour.ts';
import { register as compare } from './compare.ts';
import { register as completion } from './completion.ts';
import { register as doctor } from './doctor.ts';
import { register as exporting } from './export.ts';
import { register as field } from './field.ts';
import { register as follow } from './follow.ts';
import { register as glass } from './glass.ts';
import { register as handbook } from './handbook.ts';
import { register as importing } from './import.ts';
import { register as learn } from './learn.ts';
import { register as plan } from './plan.ts';
import { register as prime } from './prime.ts';
import { register as rehearse } from './rehearse.ts';
import { register as report } from './report.ts';
import { register as restore } from './restore.ts';
import { register as serve } from './serve.ts';
import { register as simulate } from './simulate.ts';
import { register as trust } from './trust.ts';

const commands = [
  plan,
  field,
  simulate,
  rehearse,
  follow,
  importing,
  check,
  learn,
  compare,
  report,
  colour,
  glass,
  prime,
  handbook,
  exporting,
  restore,
  serve,
  trust,
  doctor,
  completion,
];

const { version } = createRequire(import.meta.url)('#package.json') as { version: string };

export function umberpanProgram(): Command {
  const program = new Command('umberpan')
    .description('Plan, rehearse, follow and learn the cook of dark brewing sugar, from one physical model of the pan.')
    .version(version)
    .showHelpAfterError('(`--help` says what is allowed)')
    .exitOverride();
  for (const register of commands) register(program);
  return program;
}

/** 0 done, 1 failed, 2 misused; a command that ends otherwise says so with `process.exitCode` or `program.error`. */
export function exitCodeFor(error: unknown): number {
  if (!(error instanceof CommanderError)) return 1;
  return error.exitCode === 1 && error.code.startsWith('commander.') && error.code !== 'commander.error'
    ? 2
    : error.exitCode;
}
