/** Every command, as it describes itself. */
import { spawnSync } from 'node:child_process';
import { fileURLToPath } from 'node:url';
import { page } from './markdown.ts';

const main = fileURLToPath(new URL('../../src/cli/main.ts', import.meta.url));

export function commandsPage(): string {
  const all = helpOf([]);
  const names = [...all.matchAll(/^ {2}(\S+)(?: .*)?$/gm)].map(([, name = '']) => name.split('|')[0] ?? '');
  const commands = names.filter((name) => /^[a-z]+$/.test(name) && name !== 'help');
  return page(
    'Commands',
    'What the command line can do, as it tells itself with `--help`. Quantities are typed as people write them: `500g`, `1.1lb`, `2tsp`, `135C`, `275F`, `25min`. It ends with 0 when done, 1 when it failed, 2 when it was misused, and 7 when it refuses for safety.',
    [fenced(all), ...commands.map((name) => `## ${name}\n\n${fenced(helpOf([name]))}`)],
  );
}

const fenced = (text: string): string => `\`\`\`text\n${text.trim()}\n\`\`\``;

function helpOf(command: readonly string[]): string {
  const { NO_COLOR: _, FORCE_COLOR: __, ...env } = process.env;
  const said = spawnSync(process.execPath, ['--import', 'tsx', main, ...command, '--help'], { encoding: 'utf8', env });
  if (said.status !== 0)
    throw new Error(`umberpan ${command.join(' ')} --help ended with ${said.status}: ${said.stderr}`);
  return said.stdout;
}
