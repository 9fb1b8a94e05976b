#!/usr/bin/env node
/** Runs the command line as a process: what goes wrong becomes an exit code. */
import { CommanderError } from 'commander';
import { endQuietlyWhenClosed } from './output.ts';
import { exitCodeFor, umberpanProgram } from './program.ts';

endQuietlyWhenClosed(process.stdout);

try {
  await umberpanProgram().parseAsync();
} catch (error) {
  if (!(error instanceof CommanderError)) console.error(error instanceof Error ? error.message : error);
  process.exitCode = exitCodeFor(error);
}
