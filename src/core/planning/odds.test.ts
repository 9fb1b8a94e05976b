import { expect, test } from 'vitest';
import { ciede2000 } from '../colour/lab.ts';
import { defaultKit } from '../pan/kit.ts';
import { centralValues } from '../pan/model.ts';
import { prepareKit } from '../pan/preparedKit.ts';
import { glassLab } from './aim.ts';
import { drawOf } from './forecast.ts';
import { drawnOdds, type Landing, landedIn, looksAlike, oddsOf } from './odds.ts';
import { planFor } from './plan.ts';
import { defaultRequest } from './request.ts';

const landings: readonly Landing[] = [2, 2.9, 3, 3.05, 3.3, 6].map((a430) => ({ a430, hueIndex: 6 }));
const target = { a430: 3, hueIndex: 6, band: [2.7, 3.3] as const };

test('odds are shares of the draws: by hand, four of six lie in 2.7 to 3.3', () => {
  const odds = oddsOf(landings, target);
  expect(odds.draws).toBe(6);
  expect(odds.band).toBeCloseTo(4 / 6, 12);
  const alike = landings.filter(({ a430 }) => ciede2000(glassLab(a430, 6), glassLab(3, 6)) <= 1).length;
  expect(odds.justVisible).toBeCloseTo(alike / 6, 12);
  expect(alike).toBeGreaterThanOrEqual(2);
  expect(alike).toBeLessThan(5);
});

test('the same colour of another hue does not look the same', () => {
  expect(looksAlike({ a430: 3, hueIndex: 6 }, target)).toBe(true);
  expect(looksAlike({ a430: 3, hueIndex: 4 }, target)).toBe(false);
});

test('a plan lands on its own middle in the median kit, and its draws spread as those of a forecast do', () => {
  const prepared = prepareKit(defaultKit);
  const planned = planFor(defaultRequest, prepared);
  if (planned.kind === 'refused') throw new Error('refused');
  const { plan } = planned;
  const middle = landedIn(plan, prepared, centralValues(defaultKit), () => 0);
  const odds = drawnOdds(plan, prepared, { ...middle, band: [0, 1e6] }, 60);
  expect(odds.band).toBe(1);
  const forecast = Array.from({ length: 60 }, (_, i) => drawOf(plan, prepared, 3, i).ends.at(-1)?.a430 ?? 0).sort(
    (a, b) => a - b,
  );
  // Quartile of 60 draws each: a spread of about 0.7 in the logarithm leaves an error of 0.15.
  expect(Math.abs(Math.log(odds.a430.mid / forecast[30]))).toBeLessThan(0.5);
  expect(odds.a430.low).toBeLessThan(middle.a430);
  expect(odds.a430.high).toBeGreaterThan(middle.a430);
});
