import { expect, it } from 'vitest';
import { nameTrouble, readWeight, weightTold } from './lotFields.ts';

it.each([
  ['391', 0.391],
  ['391 g', 0.391],
  ['0.391 kg', 0.391],
  ['391,5', 0.3915],
])('reads %s as a weight, grams unless said otherwise', (text, kg) => {
  const read = readWeight(text);
  expect(read.kind === 'weight' && read.kg).toBeCloseTo(kg, 9);
});

it('takes an empty field for no weight, and says what is wrong with others', () => {
  expect(readWeight(' ')).toEqual({ kind: 'none' });
  expect(readWeight('0')).toMatchObject({ kind: 'wrong', trouble: expect.stringMatching(/too little/) });
  expect(readWeight('a lot')).toMatchObject({ kind: 'wrong' });
  expect(readWeight('25 kg')).toMatchObject({ kind: 'wrong', trouble: expect.stringMatching(/too much/) });
});

it('names are not empty and not over 80 characters', () => {
  expect(nameTrouble('Plum shards')).toBeUndefined();
  expect(nameTrouble('  ')).toMatch(/empty/);
  expect(nameTrouble('x'.repeat(81))).toMatch(/81 characters/);
});

it('tells by how much a weight is off, and asks for the tray when it is far off', () => {
  const expected = { low: 0.38, mid: 0.39, high: 0.4 };
  expect(weightTold(0.393, expected)).toBe('off by +3 g: within what was expected');
  expect(weightTold(0.61, expected)).toMatch(/off by \+220 g: outside 380 to 400 g; is the tray taken off/);
});
