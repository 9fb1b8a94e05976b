import { expect, test } from 'vitest';
import { stateColour } from '../../colour/stateColour.ts';
import { defaultKit } from '../../pan/kit.ts';
import { centralValues, modelParameters } from '../../pan/model.ts';
import { createPan } from '../../pan/physics.ts';
import { prepareKit } from '../../pan/preparedKit.ts';
import { simulate } from '../../pan/simulate.ts';
import { amountsFor } from '../amounts.ts';
import { usualField } from '../field.ts';
import { defaultRequest, type PlanRequest } from '../request.ts';
import { stepsFor } from '../steps.ts';
import { bandDraws, colourBand } from './band.ts';
import { createBranches } from './branches.ts';
import { axisShare, openAxis } from './levers.ts';

const prepared = prepareKit(defaultKit);
const values = centralValues(defaultKit);

function branchOf(changes: Partial<PlanRequest>) {
  const request = { ...defaultRequest, ...changes };
  const amounts = amountsFor(request, 0.4);
  return { charge: amounts.charge, steps: stepsFor({ request, amounts, prepared, values }) };
}

test('cooks that share their beginnings end as each would alone: colour within 0.6 %, time within a minute and a half', () => {
  const branches = [
    ...[0, 7.5, 25, 40].flatMap((brownMinutes) =>
      [2, 9].map((roastMinutes) => branchOf({ brownMinutes, roastMinutes })),
    ),
    branchOf({ invertMinutes: 12 }),
    branchOf({ form: 'syrup', alkaliGPerKg: 3 }),
    branchOf({ route: 'bright', invertMinutes: 0 }),
  ];
  const reached = createBranches(createPan(prepared, values), defaultKit).cook(branches);
  for (const [i, branch] of branches.entries()) {
    const alone = simulate(branch, prepared, values, { everyS: 60 });
    const colour = (y: Float64Array) => stateColour(y, values.absorptivity420).specific430;
    expect(Math.abs(colour(reached[i].y) / colour(alone.last) - 1), `branch ${i}`).toBeLessThan(0.006);
    expect(Math.abs(reached[i].timeS - (alone.steps.at(-1)?.endS ?? 0)), `branch ${i}`).toBeLessThan(90);
    expect(reached[i].poured).toBe(true);
  }
});

test('what was cooked before is not cooked again: another roast hold costs its roast alone', () => {
  const pan = createPan(prepared, values);
  let evaluations = 0;
  const counting = {
    ...pan,
    derivatives(y: Float64Array, dy: Float64Array) {
      evaluations++;
      pan.derivatives(y, dy);
    },
  };
  const branches = createBranches(counting, defaultKit);
  branches.cook([branchOf({ roastMinutes: 3 })]);
  const whole = evaluations;
  branches.cook([branchOf({ roastMinutes: 4 })]);
  // The roast is about an eighth of the cook.
  expect(evaluations - whole).toBeLessThan(whole / 3);
  expect(evaluations - whole).toBeGreaterThan(0);
});

test('a cook that is not done within six hours says so', () => {
  const weak = prepareKit({ ...defaultKit, stove: { kind: 'gas', ratedPowerW: 300, notches: 9 } });
  const request = { ...defaultRequest, massKg: 0.4 };
  const amounts = amountsFor(request, 0.4);
  const steps = stepsFor({ request, amounts, prepared: weak, values: centralValues(weak.kit) });
  const [end] = createBranches(createPan(weak, centralValues(weak.kit)), weak.kit).cook([
    { charge: amounts.charge, steps },
  ]);
  expect(end?.poured).toBe(false);
});

test('the kits of the band tell every uncertain number apart: there are more of them than numbers', () => {
  expect(Object.keys(modelParameters(defaultKit)).length).toBeLessThan(bandDraws);
});

test('a band of a normal logarithm is its 10 % and 90 % marks', () => {
  // Offsets of -0.5 and +0.5 have a standard deviation of 0.5: the marks lie 1.2816 x 0.5 = 0.641 off.
  const middle = new Array<number>(9).fill(Math.log(4));
  const spec = usualField(defaultRequest);
  const band = colourBand(spec, middle, [middle.map((each) => each - 0.5), middle.map((each) => each + 0.5)]);
  const { low, high } = band.at(0.3, 0.9);
  expect(low).toBeCloseTo(Math.exp(-0.6408), 4);
  expect(high).toBeCloseTo(Math.exp(0.6408), 4);
});

test('a picture that goes on past a limit has the band of its allowed part, not stretched over what is refused', () => {
  const { request, x, y } = usualField(defaultRequest);
  const open = { request, x: openAxis(x.lever, request, x.count), y };
  // Sure at the pale end, unsure at the limit.
  const spreads = [0, 0.25, 0.5, 0, 0.25, 0.5, 0, 0.25, 0.5];
  const middle = spreads.map(() => 0);
  const drawn = [spreads.map((each) => -each), spreads];
  const [within, past] = [{ request, x, y }, open].map((spec) => colourBand(spec, middle, drawn));
  const limit = axisShare(open.x, x.high);
  expect(limit).toBeLessThan(0.95);
  expect(past?.at(limit, 0.5).high).toBeCloseTo(within?.at(1, 0.5).high ?? 0, 9);
  expect(past?.at(limit / 2, 0.5).high).toBeCloseTo(within?.at(0.5, 0.5).high ?? 0, 9);
});
