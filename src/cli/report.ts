/** `umberpan report`: a cook as one HTML file that another person can repeat it by. */
import { writeFileSync } from 'node:fs';
import type { Command } from 'commander';
import { write } from './output.ts';
import { Stop, stopping } from './stop.ts';

export function register(program: Command): void {
  program
    .command('report')
    .description('make one HTML file of a cook that opens without a network, prints, and carries the plan')
    .argument('<log>', 'file of a cook as the server exports it or `umberpan import` makes it, or - for standard input')
    .option('--write <file>', 'write it to this file (otherwise to standard output)')
    .addHelpText(
      'after',
      `
The plan in it is read by \`umberpan rehearse --plan\` and \`umberpan simulate --plan\`.
Exit codes: 0 done, 1 the file can't be written, 2 misused.

Examples:
  umberpan report march.ndjson --write march.html
  umberpan report march.ndjson > march.html`,
    )
    .action((_: string, options: object, self: Command) => stopping(report)(options, self));
}

interface ReportOptions {
  readonly write?: string;
  readonly json?: boolean;
}

async function report({ write: to }: ReportOptions, { args: [file = '-'] }: Command): Promise<void> {
  const [{ cookIn }, { foldCook }, { followedBy }, { landedOf }, { reportHtml }] = await Promise.all([
    import('./cook/cookIn.ts'),
    import('../core/log/fold.ts'),
    import('../core/book/following.ts'),
    import('../core/book/landed.ts'),
    import('../core/book/report/reportHtml.ts'),
  ]);
  const state = foldCook(cookIn(file).events);
  const followed = followedBy(state);
  const html = followed && reportHtml({ state, beliefs: followed.beliefs, landed: landedOf(followed), lots: [] });
  if (html === undefined) {
    const message = `${file}: the log does not say how the cook began`;
    throw new Stop({ kind: 'misused', field: 'log', value: file, message });
  }
  if (to === undefined) return write(html);
  try {
    writeFileSync(to, html);
  } catch (error) {
    const trouble = (error as NodeJS.ErrnoException).code ?? error;
    throw new Stop({
      kind: 'failed',
      field: '--write',
      value: to,
      message: `--write ${to}: can't be written (${trouble})`,
    });
  }
}
