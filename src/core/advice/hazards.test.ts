import { expect, it } from 'vitest';
import { hazardOf } from './hazards.ts';

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
  expect(hazardOf('sodiumHydroxide', strength).word).toBe(word);
});

it('the category that is named follows the strength', () => {
  expect(hazardOf('sodiumHydroxide', 0.049).says).toContain('1B');
  expect(hazardOf('sodiumHydroxide', 0.05).says).toContain('1A');
});

it('slaked lime is a danger to the eyes at any strength', () => {
  expect(hazardOf('calciumHydroxide', 0.001)).toMatchObject({ word: 'Danger' });
});
