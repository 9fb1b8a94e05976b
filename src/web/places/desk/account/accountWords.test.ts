import { expect, test } from 'vitest';
import {
  batchText,
  distilledText,
  hardnessText,
  invertedText,
  readyText,
  trayText,
  unpricedText,
} from './accountWords.ts';

const cost = { batch: 0.722, perKg: 1.805, saved: 2.878, unpriced: [] };

test('a batch of 0.722 is held against as much bought sugar, also when that is cheaper', () => {
  expect(batchText(cost, 9)).toBe('0.72 for this batch; 2.88 less than as much bought at 9.00 a kg.');
  expect(batchText({ ...cost, saved: -0.3 }, 1)).toBe(
    '0.72 for this batch; 0.30 more than as much bought at 1.00 a kg.',
  );
});

test('a price that is not typed is named, and what it leaves out makes the cost a lower bound', () => {
  const some = { ...cost, saved: undefined, unpriced: ['maltExtract', 'energy'] as const };
  expect(batchText(some, undefined)).toBe('at least 0.72 for this batch.');
  expect(unpricedText(some, undefined)).toBe('No price typed for malt extract, energy and bought sugar.');
  expect(unpricedText(some, 9)).toBe('No price typed for malt extract and energy.');
  expect(unpricedText(cost, undefined)).toBe('No price typed for bought sugar.');
  expect(unpricedText(cost, 9)).toBeUndefined();
});

test('a slab of twice the thickness takes half the tray', () => {
  const tray = { areaM2: 0.0432, thicknessM: 0.006 };
  expect(trayText(tray)).toBe('432 cm², 21 × 21 cm');
  expect(trayText(tray, 0.012)).toBe('216 cm², 15 × 15 cm');
});

test('distilled water is said to change what could be told apart, and nothing less', () => {
  expect(distilledText({ colourFactor: 0.972, invertedMore: 0.0585 })).toBe(
    'With distilled water this plan would invert 6 points more and land 3 % paler.',
  );
  expect(distilledText({ colourFactor: 1.004, invertedMore: 0.012 })).toBe(
    'With distilled water this plan would invert 1 point more.',
  );
  expect(distilledText({ colourFactor: 0.996, invertedMore: -0.004 })).toMatch(/nothing that could be told apart/);
});

test('hardness is said to change nothing, by how little, and what boiling does', () => {
  const hardness = { mgPerL: 300, calciumGPerKg: 0.03964, bindsAtMost: 0.01583, boilsOutMgPerL: 200 };
  expect(hardnessText(hardness)).toBe(
    'Its hardness, 300 mg/L, changes nothing in this plan: it binds 1.6 % of the alkali at most, until the syrup turns sour, ' +
      'which is less than the plan can tell. It leaves 40 mg of calcium in a kg of sugar. ' +
      'Boiled before and poured off its chalk, the water loses 200 mg/L of its alkalinity at most.',
  );
  expect(hardnessText({ ...hardness, bindsAtMost: 0 })).toContain('no alkali is there for it to bind');
  expect(hardnessText(undefined)).toBe('How hard it is changes nothing in this model.');
});

test('the sheet names tray and bath of hard sugar, and nothing of a syrup', () => {
  const hard = { tray: { areaM2: 0.0432, thicknessM: 0.006 }, bathKg: 0.856 };
  expect(readyText(hard as Parameters<typeof readyText>[0])).toBe('Tray 432 cm², 21 × 21 cm at 6 mm; cold bath 856 g.');
  expect(readyText({ tray: undefined, bathKg: undefined } as Parameters<typeof readyText>[0])).toBe('');
});

test('what is inverted is told as a band once draws are there, with what would raise it in this plan', () => {
  const deep = { route: 'deep', maltExtractGPerKg: 8 } as const;
  expect(invertedText(0.186, undefined, deep, 100)).toBe(
    'As planned, 19 % of the sugar is inverted at the end. ' +
      'More comes of a longer or hotter invert hold, distilled water or less malt extract.',
  );
  expect(invertedText(0.186, { low: 0.07, mid: 0.186, high: 0.59 }, deep, 0)).toBe(
    'As planned, 19 % of the sugar is inverted at the end; 8 in 10 cooks end at 7 to 59 %. ' +
      'More comes of a longer or hotter invert hold or less malt extract.',
  );
  expect(invertedText(0.4, undefined, { route: 'pale', maltExtractGPerKg: 0 }, 100)).toContain(
    'distilled water or a pinch more acid',
  );
  expect(invertedText(0.99, undefined, { route: 'pale', maltExtractGPerKg: 0 }, 100)).not.toContain('More');
});
