import { beforeAll, describe, expect, it, vi } from 'vitest';
import { cookedLog } from '../../../test/cookedLog.ts';
import { begunBody, sampleDevice } from '../../../test/sampleCook.ts';
import { foldCook } from '../log/fold.ts';
import { defaultKit } from '../pan/kit.ts';
import { defaultRequest } from '../planning/request.ts';
import type { Range } from '../twin/range.ts';
import { unseenOf } from '../twin/unseen.ts';
import { followedBy } from './following.ts';
import { type Hindsight, hindsightOf } from './hindsight.ts';

// A kit is fitted to a whole cook: some hundreds of runs of the model.
vi.setConfig({ testTimeout: 120_000, hookTimeout: 120_000 });

const request = { ...defaultRequest, massKg: 0.2, route: 'bright', invertMinutes: 4, brownMinutes: 5 } as const;
const width = ({ low, high }: Range) => high - low;

describe('a cook on a hidden kit', () => {
  const { events, begun, values, course, lastS } = cookedLog(defaultKit, 11, 'live', 'hidden', { request });
  const state = foldCook(events);
  let known: Extract<Hindsight, { kind: 'known' }>;
  let runs = 0;

  beforeAll(() => {
    const found = hindsightOf(state, { draws: 12, onRun: (count) => (runs = count) });
    if (found?.kind !== 'known') throw new Error('no kitchen tells this log');
    known = found;
  });

  it('is known each half minute from the beginning to the pour, in ranges that are in order', () => {
    expect(known.draws).toBe(12);
    expect(runs).toBeGreaterThan(50);
    expect(known.rows.map(({ timeS }) => timeS)).toEqual(known.rows.map((_, row) => 30 * row));
    expect(lastS - (known.rows.at(-1)?.timeS ?? 0)).toBeLessThan(30);
    for (const { believedC, unseen } of known.rows) {
      for (const { low, mid, high } of [believedC, ...Object.values(unseen)]) {
        expect(low).toBeLessThanOrEqual(mid);
        expect(mid).toBeLessThanOrEqual(high);
      }
    }
  });

  it('starts from what was weighed in, in a kitchen as warm as it was', () => {
    const { sucroseKg, waterKg, maltExtractKg } = begun.amounts.charge;
    const [{ unseen, believedC }] = known.rows;
    // Malt extract holds some water of its own.
    expect(Math.abs(unseen.waterShare.mid - waterKg / (sucroseKg + waterKg + maltExtractKg))).toBeLessThan(0.01);
    expect(believedC.mid).toBeCloseTo(begun.kit.roomC, 0);
  });

  it('comes near to what was hidden: temperature, water and colour', () => {
    const { charge } = begun.amounts;
    const truth = (timeS: number) => {
      const y = course.states.map((column) => column[timeS]);
      return { celsius: course.temperatureC[timeS], ...unseenOf({ y: Float64Array.from(y), values, ph: 7 }, charge) };
    };
    const warm = known.rows.filter(({ timeS }) => timeS >= 300);
    expect(warm.length).toBeGreaterThan(20);
    for (const { timeS, believedC, unseen } of warm) {
      const { celsius, waterShare } = truth(timeS);
      expect(Math.abs(believedC.mid - celsius), `at ${timeS} s`).toBeLessThan(4);
      expect(Math.abs(unseen.waterShare.mid - waterShare), `at ${timeS} s`).toBeLessThan(0.03);
    }
    // No spoon test told of the colour: it is known by what temperature and time make of it, to a factor of two.
    const { unseen } = warm[warm.length - 1];
    expect(Math.abs(Math.log(unseen.a430.mid / truth(30 * (known.rows.length - 1)).a430))).toBeLessThan(Math.log(2));
  });

  it('knows the temperature no less surely than the twin did as it went', () => {
    const beliefs = followedBy(state, 48)?.beliefs ?? [];
    const pairs = known.rows.flatMap((row) => {
      const then = beliefs.findLast(({ timeS }) => timeS <= row.timeS);
      return then && row.timeS >= 300 ? [[width(row.believedC), width(then.believedC)] as const] : [];
    });
    const mean = (at: 0 | 1) => pairs.reduce((sum, pair) => sum + pair[at], 0) / pairs.length;
    expect(pairs.length).toBeGreaterThan(20);
    expect(mean(0)).toBeLessThan(mean(1));
  });
});

it('has nothing to say of a log that does not say how the cook began', () => {
  const device = sampleDevice('a');
  expect(hindsightOf(foldCook([device.make('heat', { notch: 3 }, 0)]))).toBeUndefined();
});

it('says so when no kitchen that was likely tells the log: cold all along on full heat', () => {
  const device = sampleDevice('a');
  const reading = { probe: 'pan', valueC: 30, quality: 'fresh', unit: 'Cel', raw: 30 } as const;
  const state = foldCook([
    device.make('begun', begunBody, 0),
    device.make('heat', { notch: 9 }, 1),
    ...Array.from({ length: 60 }, (_, i) => device.make('reading', reading, 30 * (i + 1))),
  ]);
  const found = hindsightOf(state);
  expect(found).toMatchObject({ kind: 'untold' });
  expect(found?.kind === 'untold' && found.readingsOffC).toBeGreaterThan(5);
});
