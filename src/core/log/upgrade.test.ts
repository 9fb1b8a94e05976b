import { expect, it } from 'vitest';
import { sampleCook } from '../../../test/sampleCook.ts';
import { upToDate } from './upgrade.ts';

const { reading } = sampleCook(5);
/** An invented history of a kind: the first version was in Fahrenheit, the second called the value `celsius`. */
const history = {
  reading: [
    ({ f }: { f: number }) => ({ celsius: (f - 32) / 1.8 }),
    ({ celsius }: { celsius: number }) => ({ valueC: celsius }),
  ],
};

it('leads a body of any earlier version to the present one, step by step', () => {
  expect(upToDate({ ...reading, v: 1, body: { f: 212 } }, history)).toMatchObject({ v: 3, body: { valueC: 100 } });
  expect(upToDate({ ...reading, v: 2, body: { celsius: 99 } }, history)).toMatchObject({ v: 3, body: { valueC: 99 } });
});

it('leaves the present version as it is', () => {
  expect(upToDate(reading)).toEqual(reading);
  expect(upToDate({ ...reading, v: 3 }, history)).toMatchObject({ v: 3, body: reading.body });
});

it.each([
  ['a later version', { v: 4 }],
  ['a kind that is not known', { kind: 'smell' }],
  ['a kind by the name of something that every object has', { kind: 'toString' }],
])('does not guess at %s', (_, change) => {
  expect(upToDate({ ...reading, ...change }, history)).toBeUndefined();
});
