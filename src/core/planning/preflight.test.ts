import { expect, test } from 'vitest';
import { defaultKit } from '../pan/kit.ts';
import { prepareKit } from '../pan/preparedKit.ts';
import { planFor } from './plan.ts';
import { checksFor } from './preflight.ts';
import { defaultRequest, type Form, type Route } from './request.ts';

function lyeCheck(route: Route, form: Form) {
  const planned = planFor({ ...defaultRequest, route, form }, prepareKit(defaultKit));
  if (planned.kind === 'refused') throw new Error('the plan is refused');
  return checksFor(planned.plan, false).find(({ id }) => id === 'CHECK-LYE');
}

test.each([
  ['deep', 'hard', true],
  ['bright', 'syrup', true],
  ['pale', 'syrup', true],
  ['pale', 'hard', false],
] as const)('%s and %s: lye is asked for before the heat is on: %s', (route, form, asked) => {
  expect(lyeCheck(route, form) !== undefined).toBe(asked);
});

test('lye is asked for with gloves, a scale and a vessel that stand it', () => {
  for (const words of ['nitrile gloves', '0.01 g', 'stainless steel or PP', 'never in aluminium', 'nor in glass'])
    expect(lyeCheck('deep', 'hard')?.text).toContain(words);
});
