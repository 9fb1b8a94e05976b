/** Every command, as it describes itself. */
import type { Command } from 'commander';
import { umberpanProgram } from '../../src/cli/program.ts';
import { page } from './markdown.ts';

export function commandsPage(): string {
  const program = umberpanProgram();
  return page(
    'Commands',
    'What the command line can do, as it tells itself with `--help`. Quantities are typed as people write them: `500g`, `1.1lb`, `2tsp`, `135C`, `275F`, `25min`. It ends with 0 when done, 1 when it failed, 2 when it was misused, and 7 when it refuses for safety.',
    [
      fenced(helpOf(program)),
      ...program.commands.map((command) => `## ${command.name()}\n\n${fenced(helpOf(command))}`),
    ],
  );
}

const fenced = (text: string): string => `\`\`\`text\n${text.trim()}\n\`\`\``;

function helpOf(command: Command): string {
  let text = '';
  command.configureOutput({
    writeOut: (piece) => (text += piece),
    getOutHelpWidth: () => 80,
    getOutHasColors: () => false,
  });
  command.outputHelp();
  return text;
}
