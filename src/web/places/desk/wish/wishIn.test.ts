import { expect, test } from 'vitest';
import { wishIn } from './wishIn.ts';

test.each([
  ['colour=45&mass=400', 45, 0.4],
  ['colour=45', 45, undefined],
  ['colour=dark&mass=-5', undefined, undefined],
  ['', undefined, undefined],
])('?%s asks for %s EBC and %s kg', (query, ebc, massKg) => {
  expect(wishIn(query)).toEqual({ ebc, massKg });
});
