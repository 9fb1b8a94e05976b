import { expect, it } from 'vitest';
import { screenIn } from './taughtScreen.ts';

const at = '2030-05-01T09:00:00.000Z';
const matches = { half: 188, quarter: 137 };

it('gives back what was stored, with what it comes to', () => {
  expect(screenIn(JSON.stringify({ at, matches }))).toEqual({ at, matches, steepness: 1 });
});

it.each([
  ['nothing', null],
  ['no JSON', '{'],
  ['what was taken away', 'null'],
  ['a number', '7'],
  ['no day', JSON.stringify({ matches })],
  ['a match alone', JSON.stringify({ at, matches: { half: 188 } })],
  ['words for levels', JSON.stringify({ at, matches: { half: 'a', quarter: 'b' } })],
  ['levels of no screen', JSON.stringify({ at, matches: { half: 240, quarter: 200 } })],
  ['matches that contradict each other', JSON.stringify({ at, matches: { half: 160, quarter: 150 } })],
])('%s teaches nothing', (_, text) => {
  expect(screenIn(text)).toBeUndefined();
});
