/** `umberpan plan`: amounts, solution, pan fit and steps of a sugar in a kitchen. */
import { type Command, Option } from 'commander';
import type { Texts } from './input.ts';
import { addInputs } from './options.ts';
import { write, writeJson, writeTo } from './output.ts';
import { accountInputs } from './plan/accountOptions.ts';
import { aimInputs } from './plan/aimOptions.ts';
import { addPlanOptions } from './plan/planOptions.ts';
import { stopping } from './stop.ts';

export function register(program: Command): void {
  const command = program.command('plan').description('what to weigh, mix and do for a sugar in your kitchen');
  command.optionsGroup('The aim:');
  addInputs(command, aimInputs);
  addPlanOptions(command);
  command.optionsGroup('What it comes to:');
  addInputs(command, accountInputs);
  command
    .optionsGroup('Output:')
    .addOption(new Option('--json', 'the full plan as JSON, for `umberpan simulate --plan`').conflicts('sheet'))
    .option('--sheet <file>', 'a sheet for the kitchen wall as HTML that prints on one page (- for standard output)')
    .addHelpText(
      'after',
      `
With --colour the route (unless given), the dose and the holds are chosen for it, and the odds are stated from drawn kits.
Taste is an index from 0 to 10 of the model's own, assumed throughout: nobody has published taste over time for such sugars.
Exit codes: 0 done, 1 the kitchen can't do it or the file can't be written, 2 misused, 7 refused because it breaks a limit of safety.

Examples:
  umberpan plan --mass 400g --route deep --dose 5
  umberpan plan --mass 1lb --form syrup --brix 78 --route bright --brown 284F --stove gas --pan 20cm
  umberpan plan --route bright --brown 138C --brown-time 15min --step 146C,10min --step 157C,4min
  umberpan plan --colour 45EBC --within 10EBC --roast-taste 6
  umberpan plan --colour 20SRM --route bright --form syrup --sugar-price 1.2 --bought-price 9
  umberpan plan --kit kitchen.json --json > plan.json
  umberpan plan --route bright --form syrup --sheet sheet.html`,
    )
    .action(stopping(plan));
}

async function plan(options: Texts & { readonly json?: boolean; readonly sheet?: string }): Promise<void> {
  const [{ planFromOptions }, { aimedPlan }, { accountOptionsFrom }] = await Promise.all([
    import('./plan/makePlan.ts'),
    import('./plan/aimedPlan.ts'),
    import('./plan/accountOptions.ts'),
  ]);
  const told = accountOptionsFrom(options);
  const planning = (await aimedPlan(options)) ?? (await planFromOptions(options));
  const { accountOf } = await import('../core/planning/account.ts');
  const account = accountOf(planning.plan, planning.course, planning.prepared, told);
  if (options.json) writeJson((await import('./plan/planDocument.ts')).planDocument(planning, account));
  else if (options.sheet !== undefined)
    writeTo(options.sheet, '--sheet', (await import('./plan/sheet.ts')).sheetOf(planning, account, new Date()));
  else write((await import('./plan/planText.ts')).planText(planning, account));
}
