/** Inputs as options of a command; their text is read later, so that every refusal speaks the same way. */
import type { Command } from 'commander';
import { flagOf, type Inputs } from './input.ts';

export function addInputs(command: Command, inputs: Inputs): void {
  for (const [name, input] of Object.entries(inputs)) {
    const { placeholder, meaning, required, usual, otherwise = usual, several } = input;
    const left = required ? ' (needed)' : otherwise === undefined ? '' : ` (otherwise ${otherwise})`;
    const [flags, words] = [`${flagOf(name)} ${placeholder}`, meaning + left];
    if (several) command.option(flags, words, gathered);
    else command.option(flags, words);
  }
}

function gathered(text: string, before?: string): string {
  return before === undefined ? text : `${before};${text}`;
}
