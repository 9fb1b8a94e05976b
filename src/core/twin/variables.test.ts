import { expect, test } from 'vitest';
import { defaultKit } from '../pan/kit.ts';
import { normalNumbers } from '../reactions/normal.ts';
import { createVariables, groupNames } from './variables.ts';

const variables = createVariables(defaultKit);
const { parameterNames, groups, count } = variables;
const groupAt = (i: number) => groups[count - parameterNames.length + i];

test('values made anew for the groups that changed are the very values made of all scores', () => {
  const normal = normalNumbers(3);
  const before = Float64Array.from(parameterNames, normal);
  for (const changed of groupNames) {
    const scores = before.map((score, i) => (groupAt(i) === changed ? normal() : score));
    const after = variables.valuesAfter(variables.valuesOf(before), scores, [changed]);
    expect(after).toEqual(variables.valuesOf(scores));
  }
});

test('what wanders is part of the heat; the boiling curve, the thermometer and the spoon stay what they are', () => {
  const names = variables.wandering.map((i) => parameterNames[i]);
  for (const i of variables.wandering) expect(groupAt(i)).toBe('heat');
  for (const steady of ['boilingTheta', 'thermometerOffsetC', 'thermometerLagS', 'spoonFactor'] as const) {
    expect(names).not.toContain(steady);
  }
});
