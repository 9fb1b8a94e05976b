/** `umberpan restore`: a workspace's file into a folder in which nothing is kept yet. */
import { accessSync, constants } from 'node:fs';
import type { Command } from 'commander';
import { write, writeJson } from './output.ts';
import { Stop, stopping } from './stop.ts';

export function register(program: Command): void {
  program
    .command('restore')
    .description('take in the file of a workspace, as `umberpan export` writes it')
    .argument('<file>', 'the file')
    .option('--data <folder>', 'where it shall be kept from now on (or UMBERPAN_DATA)')
    .option('--json', 'what was done, as JSON')
    .addHelpText(
      'after',
      `
All of it is taken in, or nothing: a file that is not as it was written, and a folder that has other things in it, are refused. While
\`umberpan serve\` runs on the folder, put the file in at the Book instead: it asks before it replaces anything.
Exit codes: 0 done, or it was there already, 1 refused, 2 misused.

Examples:
  umberpan restore umberpan-2031.json --data ~/umberpan-new`,
    )
    .action((_: string, options: object, self: Command) => stopping(restore)(options, self));
}

interface RestoreOptions {
  readonly data?: string;
  readonly json?: boolean;
}

async function restore({ data, json }: RestoreOptions, { args: [file = ''] }: Command): Promise<void> {
  try {
    accessSync(file, constants.R_OK);
  } catch (error) {
    const message = `${file}: can't be read (${(error as NodeJS.ErrnoException).code ?? error})`;
    throw new Stop({ kind: 'misused', field: 'file', value: file, message });
  }
  const [{ folderOf }, { restoreWorkspace }] = await Promise.all([
    import('./dataOption.ts'),
    import('../server/store/restore.ts'),
  ]);
  const folder = folderOf(data);
  const restored = await restoreWorkspace(file, folder).catch((error: unknown) => {
    const message = error instanceof Error ? error.message : String(error);
    throw new Stop({ kind: 'failed', field: 'file', value: file, message });
  });
  if (json) writeJson(restored);
  else
    write(restored.kind === 'same' ? `${folder} has all of it already.` : `${restored.rows} records are in ${folder}.`);
}
