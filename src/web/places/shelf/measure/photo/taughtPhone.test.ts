import { expect, it } from 'vitest';
import { type TaughtDilution, taughtIn, usedIn } from './taughtPhone.ts';

const same = { r: 0.1, g: 0.2, b: 0.3 };
const one = (id: string, light: TaughtDilution['light'] = 'daylight'): TaughtDilution => ({
  id,
  at: '2030-05-01T09:00:00.000Z',
  light,
  of: 'Amber',
  absorbance: same,
  sd: same,
  a430Path: 0.4,
  knownWithin: 0.03,
});

it('gives back what was stored, and leaves out what it can’t understand', () => {
  const wrong = [{ ...one('b'), light: 'candle' }, { ...one('c'), a430Path: 0 }, { ...one('d'), sd: { r: 1 } }, null];
  expect(taughtIn(JSON.stringify([one('a'), ...wrong]))).toEqual([one('a')]);
  for (const text of [null, '', '{}', '7']) expect(taughtIn(text)).toEqual([]);
});

it('reads by the latest six of the same light', () => {
  const all = [one('lamp', 'lamp'), ...Array.from({ length: 8 }, (_, at) => one(String(at)))];
  expect(usedIn('daylight', all).map(({ id }) => id)).toEqual(['2', '3', '4', '5', '6', '7']);
  expect(usedIn('lamp', all).map(({ id }) => id)).toEqual(['lamp']);
});
