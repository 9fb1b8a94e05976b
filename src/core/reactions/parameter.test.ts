import { expect, test } from 'vitest';
import { normalNumbers } from './normal.ts';
import { type Parameter, valueAt, valuesOf } from './parameter.ts';
import { reactionParameters } from './parameters.ts';

const parameter: Parameter = {
  meaning: 'a test',
  centre: 2,
  sd: 0.5,
  spread: 'lognormal',
  unit: '1',
  source: 'none',
  mark: 'assumed',
  sdReason: 'none',
};

test('a lognormal parameter lies a factor e^sd from its centre at one standard deviation', () => {
  expect(valueAt(parameter, 1)).toBeCloseTo(2 * Math.exp(0.5), 12);
  expect(valueAt(parameter, -1)).toBeCloseTo(2 / Math.exp(0.5), 12);
});

test('limits hold against far draws', () => {
  expect(valueAt({ ...parameter, spread: 'normal', within: [1, 3] }, 10)).toBe(3);
});

test('central values are the centres, and a seed always gives the same draw', () => {
  expect(valuesOf(reactionParameters).waterOrder).toBe(0.6);
  expect(valuesOf(reactionParameters, normalNumbers(7))).toEqual(valuesOf(reactionParameters, normalNumbers(7)));
  expect(valuesOf(reactionParameters, normalNumbers(7))).not.toEqual(valuesOf(reactionParameters, normalNumbers(8)));
});

test('every parameter says what it is, where it comes from and why its spread', () => {
  for (const [name, p] of Object.entries(reactionParameters)) {
    for (const text of [p.meaning, p.unit, p.source, p.sdReason]) expect(text.length, name).toBeGreaterThan(0);
    expect(p.sd, name).toBeGreaterThan(0);
  }
});

test('normal numbers have mean 0, variance 1 and normal tails', () => {
  const next = normalNumbers(1);
  const draws = Array.from({ length: 200_000 }, next);
  const mean = draws.reduce((sum, x) => sum + x, 0) / draws.length;
  const variance = draws.reduce((sum, x) => sum + x * x, 0) / draws.length;
  const beyondTwo = draws.filter((x) => Math.abs(x) > 2).length / draws.length;
  expect(Math.abs(mean)).toBeLessThan(0.01);
  expect(Math.abs(variance - 1)).toBeLessThan(0.02);
  // The normal distribution leaves 4.55 % beyond two standard deviations.
  expect(Math.abs(beyondTwo - 0.0455)).toBeLessThan(0.003);
});
