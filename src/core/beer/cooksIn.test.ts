import { expect, it } from 'vitest';
import { cooksIn, type Traced } from './cooksIn.ts';
import type { KeptDose } from './keptGlass.ts';

const told = { alkali: null, fermentable: null, pricePerKg: null };
const ofLot = (lotId: string, massKg: number): KeptDose => ({
  sugar: { kind: 'lot', lotId, ...told },
  massKg,
  added: 'kettle',
});
const bought = (massKg: number): KeptDose => ({
  sugar: { kind: 'bought', name: 'syrup', solids: 0.8, specific430AsIs: 0, inverted: 1, ...told },
  massKg,
  added: 'late',
});
const lots: Readonly<Record<string, Traced>> = {
  first: { cookId: 'march', origin: 'cooked' },
  second: { cookId: 'march', origin: 'cooked' },
  third: { cookId: 'may', origin: 'cooked' },
  written: { cookId: null, origin: 'told' },
  trial: { cookId: 'trial', origin: 'rehearsed' },
};
const lotOf = (id: string) => lots[id];

it('shares a beer among its cooks by mass, two lots of one together; bought and unknown sugar is nobody’s', () => {
  const doses = [ofLot('first', 0.1), ofLot('third', 0.2), ofLot('second', 0.3), bought(0.3), ofLot('gone', 0.1)];
  expect(cooksIn([...doses, ofLot('written', 1)], lotOf)).toEqual([
    { cookId: 'march', share: 0.2 },
    { cookId: 'may', share: 0.1 },
  ]);
});

it('a beer with sugar of a rehearsal was never drunk, one without sugar has no cook, and nothing counts for nothing', () => {
  expect(cooksIn([ofLot('first', 0.1), ofLot('trial', 0.1)], lotOf)).toEqual([]);
  expect(cooksIn([], lotOf)).toEqual([]);
  expect(cooksIn([ofLot('first', 0)], lotOf)).toEqual([]);
});
