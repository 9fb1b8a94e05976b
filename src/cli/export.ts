/** `umberpan export`: everything that is kept as one file, or the log of a cook as a table. */
import { Readable } from 'node:stream';
import { pipeline } from 'node:stream/promises';
import type { Command } from 'commander';
import { write } from './output.ts';
import { stopping } from './stop.ts';

export function register(program: Command): void {
  program
    .command('export')
    .description('write everything that is kept as one JSON file; or, of a cook’s file, a table (CSV)')
    .argument('[log]', 'file of a cook; without one: the whole workspace')
    .option('--data <folder>', 'where kits, plans and cooks are kept (or UMBERPAN_DATA)')
    .addHelpText(
      'after',
      `
The workspace's file is taken in again by \`umberpan restore\`; written out then, it is the same byte for byte. While \`umberpan serve\` runs on
the folder, take the file from the Book instead. A table loses what has no column; a cook's own file does not.
Exit codes: 0 done, 1 the folder can't be opened, 2 misused.

Examples:
  umberpan export > umberpan-2031.json
  umberpan export march.ndjson > march.csv`,
    )
    .action((_: string | undefined, options: object, self: Command) => stopping(exportAll)(options, self));
}

interface ExportOptions {
  readonly data?: string;
  readonly json?: boolean;
}

async function exportAll({ data }: ExportOptions, { args: [log] }: Command): Promise<void> {
  if (log !== undefined) return tableOf(log);
  const [{ folderFailed, folderOf }, { openStore }, { workspaceText }] = await Promise.all([
    import('./dataOption.ts'),
    import('../server/store/store.ts'),
    import('../server/store/workspace.ts'),
  ]);
  const folder = folderOf(data);
  const store = await openStore(folder).catch(folderFailed(folder));
  try {
    await pipeline(Readable.from(workspaceText(store.db)), process.stdout, { end: false });
  } finally {
    await store.close();
  }
}

async function tableOf(log: string): Promise<void> {
  const [{ cookIn }, { foldCook }, { tableText }] = await Promise.all([
    import('./cook/cookIn.ts'),
    import('../core/log/fold.ts'),
    import('../core/book/tableRows.ts'),
  ]);
  write(tableText(foldCook(cookIn(log).events)));
}
