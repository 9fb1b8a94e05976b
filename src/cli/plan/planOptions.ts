/** The options of `plan` and `simulate` that say what is cooked, and where. */
import type { Command } from 'commander';
import { addInputs } from '../options.ts';
import { kitInputs } from './kitOptions.ts';
import { requestInputs } from './requestOptions.ts';

export function addPlanOptions(command: Command): void {
  command.optionsGroup('The sugar:');
  addInputs(command, requestInputs);
  command.optionsGroup('The kitchen:').option('--kit <file>', 'a kit as JSON (- for standard input)');
  addInputs(command, kitInputs);
  command.optionsGroup('Output:');
}
