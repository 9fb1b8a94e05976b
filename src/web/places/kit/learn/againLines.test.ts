import { expect, test } from 'vitest';
import { againLines } from './againLines.ts';

test('a plan’s differences are said shortly, and those too small to do are not', () => {
  const lines = againLines([
    { lever: 'brownMinutes', from: 25, to: 21 },
    { lever: 'alkaliGPerKg', from: 4, to: 4.25 },
    { lever: 'roastMinutes', from: 5, to: 5.2 },
  ]);
  expect(lines).toEqual(['4 min less browning', '0.25 g/kg more alkali']);
});
