// How surely a reading in the wrong unit is told from a right one: over the temperatures of a cook, with noise, in both directions.
import { expect, test } from 'vitest';
import { normalNumbers } from '../../reactions/normal.ts';
import { readingDoubt } from './readingDoubt.ts';

const temperaturesC = Array.from({ length: 111 }, (_, i) => 60 + i);
/** From a twin that has followed for long to one that has heard nothing for minutes, K. */
const forecastSdsK = [0.5, 1, 2, 4];
const draws = 50;

/** Share of readings taken for the other unit; the twin is off by as much as it says, and the thermometer shows what it sends. */
function asked(sent: (trueC: number) => number, seed: number): number {
  const normal = normalNumbers(seed);
  const all = temperaturesC.flatMap((trueC) =>
    forecastSdsK.flatMap((sd) =>
      Array.from({ length: draws }, () => {
        const { otherUnit } = readingDoubt({ expected: trueC - sd * normal(), sd }, sent(trueC));
        return otherUnit !== undefined;
      }),
    ),
  );
  return all.filter((one) => one).length / all.length;
}

test.each([
  ['Fahrenheit sent as Celsius', (trueC: number) => 1.8 * trueC + 32],
  ['Celsius sent as Fahrenheit', (trueC: number) => (trueC - 32) / 1.8],
])('%s is asked about at least 99 times in 100', (_, sent) => {
  expect(asked(sent, 41)).toBeGreaterThanOrEqual(0.99);
});

test.each([
  ['right', 0],
  ['right on the thermometer but 10 K from the syrup, with its tip out of it,', -10],
])('a reading that is %s is asked about less than once in 1000', (_, offK) => {
  expect(asked((trueC) => trueC + offK, 42)).toBeLessThan(0.001);
});
