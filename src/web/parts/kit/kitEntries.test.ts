import { expect, test } from 'vitest';
import { defaultKit } from '../../../core/pan/kit.ts';
import { type Entry, EntryError } from '../entry.ts';
import { kitEntries } from './kitEntries.ts';

const entries = kitEntries('C');
const entryOf = (field: string) => entries[field] as Entry<typeof defaultKit>;

test('a kit whose hardness nobody told shows none, and keeps none', () => {
  const hardness = entryOf('water.hardnessMgPerL');
  expect(hardness.show(defaultKit)).toBe('');
  const told = hardness.put(defaultKit, '180');
  expect(told.water).toEqual({ alkalinityMgPerL: 100, hardnessMgPerL: 180 });
  expect(hardness.show(told)).toBe('180 mg/L');
  expect(JSON.stringify(hardness.put(told, ' '))).toBe(JSON.stringify(defaultKit));
});

// 10 mg of CaO are 17.85 mg of CaCO3; a French degree is 10 mg of CaCO3.
test.each([
  ['10 dH', 178.5],
  ['10°dH', 178.5],
  ['18 fH', 180],
  ['180 ppm', 180],
  ['180 mg/L', 180],
] as const)('water is typed as %s', (text, mgPerL) => {
  for (const field of ['water.alkalinityMgPerL', 'water.hardnessMgPerL']) {
    const { water } = entryOf(field).put(defaultKit, text);
    expect(field.endsWith('hardnessMgPerL') ? water.hardnessMgPerL : water.alkalinityMgPerL).toBeCloseTo(mgPerL, 1);
  }
});

test('alkalinity that is typed anew leaves the hardness', () => {
  const hard = { ...defaultKit, water: { alkalinityMgPerL: 100, hardnessMgPerL: 250 } };
  expect(entryOf('water.alkalinityMgPerL').put(hard, '40').water).toEqual({
    alkalinityMgPerL: 40,
    hardnessMgPerL: 250,
  });
});

test('what is no hardness is refused with what is allowed', () => {
  expect(() => entryOf('water.hardnessMgPerL').put(defaultKit, '5 kg')).toThrow(EntryError);
  expect(() => entryOf('water.hardnessMgPerL').put(defaultKit, '2000')).toThrow('Allowed: 0 mg/L to 1500 mg/L');
});
