import { describe, expect, test } from 'vitest';
import { cookedLog } from '../../../test/cookedLog.ts';
import { learnFromLog } from '../learn/fromLog.ts';
import { defaultKit } from '../pan/kit.ts';
import { pouredKg } from '../pan/poured.ts';
import { defaultRequest } from '../planning/request.ts';
import { expectedOfTold } from './known.ts';
import type { Note } from './note.ts';
import { taughtByLots } from './taughtByLots.ts';

const share = (mid: number) => ({ low: 0.9 * mid, mid, high: 1.1 * mid });
const expected = expectedOfTold({ massKg: 0.4, waterShare: share(0.03), inverted: share(0.7), ebc: 100 });
const lot = (weighedKg: number | null, notes: readonly Note[] = []) => ({ lot: { expected, weighedKg }, notes });
const counted: Note = { kind: 'stocked', at: '2030-03-02T10:00:00.000Z', how: 'counted', kg: 0.15, why: '' };

describe('what a cook can be learned from of its sugar', () => {
  test('the weight, when all that was made of it was weighed: at the pour, or before anything was taken', () => {
    expect(taughtByLots([])).toEqual([]);
    expect(taughtByLots([lot(0.25)])).toEqual([{ kind: 'yield', massKg: 0.25 }]);
    expect(taughtByLots([lot(0.25), lot(null, [counted])])).toEqual([{ kind: 'yield', massKg: 0.4 }]);
    expect(taughtByLots([lot(0.25), lot(null)])).toEqual([]);
  });

  test('what was measured of each of its lots', () => {
    const acid: Note = {
      ...counted,
      kind: 'measured',
      reading: { method: 'acidity', by: 'meter', ph: 5.4, sugarG: 1, waterG: 9 },
    };
    expect(taughtByLots([lot(null, [acid]), lot(null, [acid])]).map(({ kind }) => kind)).toEqual([
      'dilutionPh',
      'dilutionPh',
    ]);
  });

  test('a weight that the pan explains is learned with, and a mistyped one is refused with its cook', () => {
    const request = { ...defaultRequest, route: 'bright', invertMinutes: 10, brownMinutes: 10 } as const;
    const { events, course } = cookedLog(defaultKit, 3, 'live', 'cook', { request });
    const massKg = pouredKg(course.last);
    const weighed = (kg: number) => learnFromLog({ events, kit: defaultKit, measured: taughtByLots([lot(kg)]) });
    expect(weighed(massKg).kind).toBe('learned');
    expect(weighed(massKg / 2).kind).toBe('refused');
  }, 60_000);
});
