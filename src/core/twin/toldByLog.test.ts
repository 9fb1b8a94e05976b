import { expect, test } from 'vitest';
import { begunBody, sampleBodies, sampleDevice } from '../../../test/sampleCook.ts';
import { foldCook } from '../log/fold.ts';
import { readingAsReceived } from '../log/readingAsReceived.ts';
import { createTelling } from './toldByLog.ts';

const phone = sampleDevice('cook-1');
const begun = phone.make('begun', begunBody, 0);
const told = (...events: readonly Parameters<typeof foldCook>[0][number][]) =>
  createTelling()(foldCook([begun, ...events]));

test('deeds and measurements come as the twin takes them; stirring and notes say nothing to it', () => {
  const events = [
    phone.make('stir', {}, 1),
    phone.make('water', sampleBodies.water, 2),
    phone.make('weight', { grossKg: 1.32, tareKg: 0.9 }, 3),
    phone.make('dilutionBrix', { brix: 8, syrupKg: 0.01, waterKg: 0.09, temperatureC: 20 }, 4),
    phone.make('spoonTest', { a430: null, behaviour: 'bends', taste: [] }, 5),
    phone.make('note', { text: 'smells of plums' }, 6),
    phone.make('poured', {}, 7),
  ];
  expect(told(...events)).toMatchObject([
    { timeS: 2, deed: { kind: 'water', waterKg: 0.0049, spoonfuls: 1 } },
    { timeS: 3, observation: { kind: 'weight', contentsKg: expect.closeTo(0.42, 9) } },
    // 8 % of 100 g is 8 g of solids, from 10 g of syrup.
    { timeS: 4, observation: { kind: 'solids', solids: expect.closeTo(0.8, 9) } },
    { timeS: 7, deed: { kind: 'pour' } },
  ]);
});

test('a thermometer that sends each second is heard every five, a person always', () => {
  const sent = Array.from({ length: 21 }, (_, i) =>
    phone.make('reading', readingAsReceived('pan', 100 + i / 10, 'Cel'), 10 + i),
  );
  const byHand = { ...readingAsReceived('by hand', 101, 'Cel'), quality: 'byHand' } as const;
  const times = told(...sent, phone.make('reading', byHand, 31), phone.make('reading', byHand, 32)).map(
    ({ timeS }) => timeS,
  );
  expect(times).toEqual([10, 15, 20, 25, 30, 31, 32]);
});

test('what is no temperature, or was guessed, is not told', () => {
  const lost = phone.make('reading', readingAsReceived('pan', '--', 'Cel'), 1);
  const guessed = phone.make('reading', { ...readingAsReceived('pan', 101, 'Cel'), quality: 'guessed' }, 2);
  expect(told(lost, guessed)).toEqual([]);
});

test('the same entry gives the very same object, one put right another', () => {
  const telling = createTelling();
  const [heat, water] = [phone.make('heat', { notch: 4 }, 1), phone.make('water', sampleBodies.water, 2)];
  const [first, second] = telling(foldCook([begun, heat, water]));
  const right = phone.make(
    'correction',
    { corrects: water.id, kind: 'water', body: { ...sampleBodies.water, waterKg: 0.01 } },
    3,
  );
  const [again, other] = telling(foldCook([begun, heat, water, right]));
  expect(again).toBe(first);
  expect(other).not.toBe(second);
});
