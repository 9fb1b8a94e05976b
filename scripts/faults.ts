// Makes every fault of `test/faults` as often as `docs/reference/faults.md` says, and prints the rows of its table: `npm run faults`,
// or `npm run faults -- clock disk` for those whose names have one of the words.
import { allFaults } from '../test/faults/all.ts';

const words = process.argv.slice(2);
const asked = allFaults.filter(({ name }) => words.length === 0 || words.some((word) => name.includes(word)));
if (asked.length === 0)
  throw new Error(`no fault is called so; there are: ${allFaults.map(({ name }) => name).join('; ')}`);

for (const { name, how, tries, hindered, make } of asked) {
  const why = hindered?.();
  if (why !== undefined) {
    console.error(`${name}: not made here: ${why}`);
    continue;
  }
  const outcome = await make(tries.many);
  console.log(`| ${name} | ${how} | ${outcome.tries} | ${outcome.losses.length} | ${outcome.seen} |`);
  for (const loss of outcome.losses) console.error(`  ${loss}`);
  if (outcome.losses.length > 0) process.exitCode = 1;
}
