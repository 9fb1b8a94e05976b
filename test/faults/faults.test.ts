import { expect, it } from 'vitest';
import { quickFaults } from './all.ts';

/** The same, more often, with the rows of its table: `npm run faults`. */
it.for(quickFaults)('$name: nothing is lost', { timeout: 120_000 }, async ({ hindered, make, tries }, { skip }) => {
  const why = hindered?.();
  if (why !== undefined) skip(why);
  const { losses, seen } = await make(tries.few);
  console.log(seen);
  expect(losses).toEqual([]);
});
