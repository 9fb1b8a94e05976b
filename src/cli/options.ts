/** Inputs as options of a command; their text is read later, so that every refusal speaks the same way. */
import type { Command } from 'commander';
import { flagOf, type Inputs } from './input.ts';

export function addInputs(command: Command, inputs: Inputs): void {
  for (const [name, { placeholder, meaning, required, usual, otherwise = usual }] of Object.entries(inputs)) {
    const left = required ? ' (needed)' : otherwise === undefined ? '' : ` (otherwise ${otherwise})`;
    command.option(`${flagOf(name)} ${placeholder}`, meaning + left);
  }
}
