import { describe, expect, test } from 'vitest';
import { hold } from '../../../../test/holdStep.ts';
import { normalNumbers } from '../../reactions/normal.ts';
import { surpriseLimit } from '../../twin/ensemble.ts';
import { limits } from '../limits.ts';
import { type AlarmId, alarmIds } from './catalogue.ts';
import { conditionsOf } from './conditions.ts';
import { noAlarms, stepAlarms } from './engine.ts';
import type { OtherUnit } from './readingDoubt.ts';
import { leadTimeS, leadTimeSum, usualAlarmSettings, usualLeadTime } from './settings.ts';
import type { Watch, WatchedReading } from './watch.ts';

function aheadOf(...rowsC: readonly number[]): Watch['ahead'] {
  return { everyS: 15, temperatureC: rowsC.map((t) => Float64Array.of(t, t, t, t)) };
}

function read(valueC: number, surprise: number, otherUnit?: OtherUnit): WatchedReading {
  return { valueC, doubt: { surprise, strange: Math.abs(surprise) > surpriseLimit, otherUnit } };
}
const strangeness = (...surprises: readonly number[]) => surprises.map((surprise) => read(130, surprise));

/** A watch on which nothing is amiss. */
const calm: Watch = {
  timeS: 1000,
  step: hold,
  heatOn: true,
  poured: false,
  holding: true,
  ready: false,
  temperatureC: 130,
  ahead: aheadOf(130, 130, 130, 130, 130, 130, 130, 130, 130),
  receivedS: 1000,
  usedS: 1000,
  everyS: 10,
  byHand: false,
  lastReadings: strangeness(0.3, -0.4, 1),
  apartK: null,
  foam: false,
  touchedS: 900,
  freeBytes: null,
  writeFailed: false,
};

const judged = (change: Partial<Watch>) => conditionsOf({ ...calm, ...change }, noAlarms);
const active = (change: Partial<Watch>): AlarmId[] =>
  (Object.entries(judged(change)) as [AlarmId, { active: boolean | null }][]).flatMap(([id, c]) =>
    c.active ? [id] : [],
  );
const roastC = limits.roastTemperature.value;

test('every alarm of the catalogue is judged, and no other', () => {
  expect(Object.keys(judged({})).toSorted()).toEqual(alarmIds.toSorted());
});

test('a calm pan has no alarm', () => {
  expect(active({})).toEqual([]);
});

describe('the scorch limit', () => {
  test('is looked for within the lead time and not beyond', () => {
    const at = (row: number) => aheadOf(...Array.from({ length: 9 }, (_, i) => (i < row ? 150 : roastC + 0.1)));
    // Rows are 15 s apart: the sixth is at 90 s, the seventh at 105 s.
    expect(active({ ahead: at(6) })).toEqual(['scorch']);
    expect(active({ ahead: at(7) })).toEqual([]);
  });

  test('takes more than half of the members', () => {
    const ahead = (hot: number) => ({
      everyS: 15,
      temperatureC: [Float64Array.from({ length: 10 }, (_, i) => (i < hot ? roastC + 5 : 155))],
    });
    expect(judged({ ahead: ahead(5) }).scorch).toEqual({ active: false, certainty: 0.5 });
    expect(judged({ ahead: ahead(6) }).scorch).toEqual({ active: true, certainty: 0.6 });
  });

  test('is heard by the thermometer alone, from two readings in a row, unless it seems to show Fahrenheit', () => {
    const reads = (...values: number[]) => ({ lastReadings: values.map((valueC) => read(valueC, 9)) });
    expect(active(reads(130, roastC + 3))).toEqual([]);
    expect(active(reads(roastC + 3, roastC + 3))).toEqual(['scorch']);
    expect(active({ lastReadings: Array(3).fill(read(266, 99, { otherC: 130, ratio: 1e9 })) })).toEqual(['unitMixUp']);
  });

  test('is cleared only with readings, and told without', () => {
    const blind = { receivedS: 900, usedS: 900 };
    expect(judged(blind).scorch.active).toBeNull();
    expect(judged({ ...blind, ahead: aheadOf(roastC + 1) }).scorch.active).toBe(true);
  });
});

test('the lead time is the sum that it shows: at 3 K a minute it comes 4.5 K before the limit', () => {
  expect(leadTimeS(usualLeadTime)).toBe(90);
  expect(leadTimeSum(usualLeadTime)).toBe('1.5 x (10 + 15 + 10 + 25) s = 90 s');
  const lead = { ...usualLeadTime, walkS: 34 };
  const ahead = aheadOf(...Array.from({ length: 9 }, (_, i) => (i < 8 ? 150 : roastC + 1)));
  expect(conditionsOf({ ...calm, ahead }, noAlarms, { ...usualAlarmSettings, lead }).scorch.active).toBe(false);
  const longer = { ...usualLeadTime, walkS: 35 };
  expect(conditionsOf({ ...calm, ahead }, noAlarms, { ...usualAlarmSettings, lead: longer }).scorch.active).toBe(true);
});

describe('the band of a hold', () => {
  test('is left upwards at once, and downwards only after it was reached', () => {
    expect(active({ temperatureC: 133.1 })).toEqual(['aboveBand']);
    expect(active({ temperatureC: 126.9 })).toEqual(['belowBand']);
    expect(active({ temperatureC: 126.9, holding: false })).toEqual([]);
  });

  test('is no matter on the way to a temperature, nor in letting down', () => {
    const climb = { ...calm.step, end: { reachedC: 140 } };
    const letDown = { ...calm.step, letDown: { solids: 0.8, hotPortionKg: 0.002, coolPortionKg: 0.008 } };
    for (const step of [climb, letDown]) expect(active({ step, temperatureC: 150 })).toEqual([]);
  });

  test('can’t be judged when the twin has had no reading', () => {
    const { aboveBand, belowBand } = judged({ usedS: 960, temperatureC: 140 });
    expect([aboveBand.active, belowBand.active]).toEqual([null, null]);
  });
});

describe('a thermometer', () => {
  test('is lost after three intervals and 15 s at least, by hand after two', () => {
    expect(active({ receivedS: 970 })).toEqual([]);
    expect(active({ receivedS: 969 })).toContain('probeLost');
    expect(active({ receivedS: 986, everyS: 1 })).toEqual([]);
    expect(active({ receivedS: 984, everyS: 1 })).toContain('probeLost');
    expect(active({ receivedS: 761, usedS: 761, everyS: 120, byHand: true })).toEqual([]);
    expect(active({ receivedS: 759, usedS: 759, everyS: 120, byHand: true })).toContain('probeLost');
  });

  test('is not missed with the heat off', () => {
    expect(active({ receivedS: 500, usedS: 500, heatOn: false })).toEqual([]);
  });

  test('is doubtful after three strange readings in a row, and trusted again after three usual ones', () => {
    expect(active({ lastReadings: strangeness(0, 5, -5) })).toEqual([]);
    expect(active({ lastReadings: strangeness(0, 5, 6, 5) })).toEqual(['probeDoubtful']);
    const doubted = {
      ...noAlarms,
      states: { ...noAlarms.states, probeDoubtful: { ...noAlarms.states.probeDoubtful, on: true } },
    };
    const still = (s: number[]) =>
      conditionsOf({ ...calm, lastReadings: strangeness(...s) }, doubted).probeDoubtful.active;
    expect(still([5, 5, 3, 1, 1])).toBe(true);
    expect(still([5, 5, 1, 1, 1])).toBe(false);
  });

  test('may show another unit, by its last reading', () => {
    const sent = (ratio: number) => judged({ lastReadings: [read(266, 99, { otherC: 130, ratio })] }).unitMixUp;
    expect(sent(999).active).toBe(true);
    expect(sent(999).certainty).toBeCloseTo(0.999, 9);
    expect(sent(Number.POSITIVE_INFINITY).certainty).toBe(1);
  });
});

test('nobody there: eleven minutes without a touch, with the heat on', () => {
  expect(active({ touchedS: 341 })).toEqual([]);
  expect(active({ touchedS: 340 })).toEqual(['unattended']);
  expect(active({ touchedS: 340, heatOn: false })).toEqual([]);
});

test('ready to cast, and out of the band within two minutes', () => {
  const ahead = aheadOf(131, 132, 132, 132, 132, 132, 132, 132, 134);
  expect(active({ ready: true, ahead })).toEqual(['castClosing']);
  expect(active({ ready: true })).toEqual([]);
  expect(active({ ahead })).toEqual([]);
});

test('foam is told by the cook, trouble with the disk by the shell', () => {
  expect(active({ foam: true })).toEqual(['foam']);
  expect(active({ freeBytes: 49e6 })).toEqual(['storageTrouble']);
  expect(active({ freeBytes: 51e6 })).toEqual([]);
  expect(active({ writeFailed: true })).toEqual(['storageTrouble']);
});

test('after the pour only a ring left on and the disk matter', () => {
  const bad = { foam: true, receivedS: 0, usedS: 0, touchedS: 0, writeFailed: true, temperatureC: 170 };
  expect(active({ ...bad, poured: true, ahead: aheadOf(170) })).toEqual(['unattended', 'storageTrouble']);
});

describe('with noise of 0.5 K about its limit for ten minutes an alarm sounds at most once', () => {
  const noisy: readonly (readonly [AlarmId, (noiseC: number) => Partial<Watch>])[] = [
    ['scorch', (noise) => ({ ahead: aheadOf(roastC + noise) })],
    ['aboveBand', (noise) => ({ temperatureC: 133 + noise })],
    ['belowBand', (noise) => ({ temperatureC: 127 + noise })],
  ];

  function sounds(id: AlarmId, at: (noiseC: number) => Partial<Watch>, seed: number, everyS: number): number {
    const normal = normalNumbers(seed);
    let alarms = noAlarms;
    for (let timeS = 0; timeS <= 600; timeS += everyS) {
      const watch = { ...calm, timeS, receivedS: timeS, usedS: timeS, touchedS: timeS, ...at(0.5 * normal()) };
      alarms = stepAlarms(alarms, { timeS, step: 'invert', conditions: conditionsOf(watch, alarms), acts: [] });
      for (const one of alarms.sounding) {
        alarms = stepAlarms(alarms, {
          timeS,
          step: 'invert',
          conditions: conditionsOf(watch, alarms),
          acts: [{ kind: 'seen', alarm: one }],
        });
      }
    }
    return alarms.history.filter(({ alarm, what }) => alarm === id && what === 'sounded').length;
  }

  test.each(noisy)('%s', (id, at) => {
    const counts = [1, 10].flatMap((everyS) => Array.from({ length: 20 }, (_, seed) => sounds(id, at, seed, everyS)));
    expect(Math.max(...counts)).toBeLessThanOrEqual(1);
    // And well beyond the limit it does sound: the noise is not simply never enough.
    expect(sounds(id, (noise) => at(noise + (id === 'belowBand' ? -2 : 2)), 1, 1)).toBe(1);
  });
});
