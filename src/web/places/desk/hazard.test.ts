import { expect, it } from 'vitest';
import { lyeClass } from '../../../core/advice/limits.ts';
import {
  neutraliserFor,
  neutralisingAmounts,
  neutralisingStrength,
} from '../../../core/planning/account/neutraliser.ts';
import { hazardOf } from './hazard.ts';

// EU classification of sodium hydroxide: 1A from 5 %, 1B from 2 %, irritant from 0.5 %.
it.each([
  [0.004, 'Note'],
  [0.005, 'Warning'],
  [0.019, 'Warning'],
  [0.02, 'Danger'],
  [0.049, 'Danger'],
  [0.05, 'Danger'],
  [0.25, 'Danger'],
] as const)('lye of %d is told with the signal word %s', (strength, word) => {
  expect(hazardOf('sodiumHydroxide', lyeClass(strength)).word).toBe(word);
});

it('the category that is named follows the strength', () => {
  expect(hazardOf('sodiumHydroxide', lyeClass(0.049)).says).toContain('1B');
  expect(hazardOf('sodiumHydroxide', lyeClass(0.05)).says).toContain('1A');
});

it('slaked lime is a danger to the eyes at any strength', () => {
  expect(hazardOf('calciumHydroxide', lyeClass(0.001))).toMatchObject({ word: 'Danger' });
});

it('what neutralises a pale syrup is classed by the strength that it is mixed to, and mixes to that strength', () => {
  expect(hazardOf('sodiumHydroxide', lyeClass(neutralisingStrength))).toMatchObject({
    word: 'Danger',
    says: expect.stringContaining('1A'),
  });
  // 1.5 g of citric acid take 0.611 g NaOH or 0.566 g Ca(OH)2; 5 % of it by weight is 19 times as much water.
  const neutraliser = neutraliserFor(0.0015, 0);
  const lye = neutralisingAmounts('sodiumHydroxide', neutraliser);
  expect(lye.pureKg * 1000).toBeCloseTo(0.611, 3);
  expect(lye.waterKg / lye.pureKg).toBeCloseTo(19, 9);
  expect(neutralisingAmounts('calciumHydroxide', neutraliser).pureKg * 1000).toBeCloseTo(0.566, 3);
});
