/** `umberpan completion`: what makes a shell finish commands and options when the tab key is pressed. */
import { Argument, type Command } from 'commander';
import { bashScript } from './completion/bash.ts';
import { fishScript, zshScript } from './completion/otherShells.ts';
import { type Place, placesOf } from './completion/places.ts';
import { write } from './output.ts';

const scripts = { bash: bashScript, zsh: zshScript, fish: fishScript } as const satisfies Record<
  string,
  (places: readonly Place[]) => string
>;
type Shell = keyof typeof scripts;

export function register(program: Command): void {
  program
    .command('completion')
    .description('what makes your shell finish commands and options at the tab key')
    .addArgument(new Argument('<shell>', 'whose script is printed').choices(Object.keys(scripts)))
    .addHelpText(
      'after',
      `
The script is made from the commands of this version; make it again after a newer one is put in.
Exit codes: 0 done, 2 misused.

Examples:
  umberpan completion bash > ~/.local/share/bash-completion/completions/umberpan
  source <(umberpan completion zsh)
  umberpan completion fish > ~/.config/fish/completions/umberpan.fish`,
    )
    .action((shell: Shell) => write(scripts[shell](placesOf(program))));
}
