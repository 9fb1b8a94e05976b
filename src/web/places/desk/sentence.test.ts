import { expect, it } from 'vitest';
import { sentence } from './sentence.ts';

it('a clause becomes a sentence, its temperatures in the unit that is read', () => {
  const clause = 'a roast at 160 C may touch 163 C; allowed is 162 °C';
  expect(sentence(clause, 'C')).toBe('A roast at 160 °C may touch 163 °C; allowed is 162 °C.');
  expect(sentence(clause, 'F')).toBe('A roast at 320 °F may touch 325 °F; allowed is 324 °F.');
});
