/** `umberpan plan`: amounts, solution, pan fit and steps of a sugar in a kitchen. */
import type { Command } from 'commander';
import type { Texts } from './input.ts';
import { write, writeJson } from './output.ts';
import { addPlanOptions } from './plan/planOptions.ts';
import { stopping } from './stop.ts';

export function register(program: Command): void {
  const command = program.command('plan').description('what to weigh, mix and do for a sugar in your kitchen');
  addPlanOptions(command);
  command
    .option('--json', 'the full plan as JSON, for `umberpan simulate --plan`')
    .addHelpText(
      'after',
      `
Exit codes: 0 done, 1 the kitchen can't do it, 2 misused, 7 refused because it breaks a limit of safety.

Examples:
  umberpan plan --mass 400g --route deep --dose 5
  umberpan plan --mass 1lb --form syrup --brix 78 --route bright --brown 284F --stove gas --pan 20cm
  umberpan plan --kit kitchen.json --json > plan.json`,
    )
    .action(stopping(plan));
}

async function plan(options: Texts & { readonly json?: boolean }): Promise<void> {
  const { planFromOptions } = await import('./plan/makePlan.ts');
  const planning = await planFromOptions(options);
  if (options.json) writeJson((await import('./plan/planDocument.ts')).planDocument(planning));
  else write((await import('./plan/planText.ts')).planText(planning));
}
