import { expect, test } from 'vitest';
import { wishIn } from './wishIn.ts';

test.each([
  ['colour=45&mass=400', 45, undefined, 0.4],
  ['colour=45', 45, undefined, undefined],
  ['colour=45&from=40.5&to=51&mass=400', 45, [40.5, 51], 0.4],
  ['colour=45&from=46&to=51', 45, undefined, undefined],
  ['colour=45&from=40', 45, undefined, undefined],
  ['from=40&to=50', undefined, undefined, undefined],
  ['colour=dark&mass=-5', undefined, undefined, undefined],
  ['', undefined, undefined, undefined],
])('?%s asks for %s EBC within %s and %s kg', (query, ebc, bandEbc, massKg) => {
  expect(wishIn(query)).toEqual({ ebc, bandEbc, massKg });
});
