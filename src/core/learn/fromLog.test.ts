import { describe, expect, test } from 'vitest';
import { cookedLog } from '../../../test/cookedLog.ts';
import type { KnownEvent } from '../log/event.ts';
import { foldCook } from '../log/fold.ts';
import { defaultKit, type Kit } from '../pan/kit.ts';
import { centralValues, drawnValues } from '../pan/model.ts';
import { normalNumbers } from '../reactions/normal.ts';
import { changesBy, kitchenNumbers } from './changes.ts';
import { faultsOf } from './faults.ts';
import { forgetting, keptThrough } from './forget.ts';
import { learnFromLog } from './fromLog.ts';
import { taughtBy, toldOf } from './taught.ts';

const cook = cookedLog(defaultKit, 3);
const learning = learnFromLog({ events: cook.events, kit: defaultKit });
if (learning.kind !== 'learned') throw new Error(JSON.stringify(learning));
const { learned, verdict } = learning;
const kit: Kit = { ...defaultKit, learned };

/** The readings changed from a time on; undefined leaves one out. */
function withReadings(change: (valueC: number, timeS: number) => number | undefined): KnownEvent[] {
  const startMs = cook.events[0].tMono;
  return cook.events.flatMap((event): KnownEvent[] => {
    if (event.kind !== 'reading' || event.body.valueC === null) return [event];
    const valueC = change(event.body.valueC, (event.tMono - startMs) / 1000);
    return valueC === undefined ? [] : [{ ...event, body: { ...event.body, valueC, raw: valueC } }];
  });
}

const kindsOf = (events: readonly KnownEvent[], told: Kit = defaultKit) =>
  faultsOf(events, foldCook(events), told, false).map((fault) => fault.kind);

describe('a finished cook teaches of the kit', () => {
  test('its readings are told to within their noise, and the kit moved no further than is likely', () => {
    expect(verdict.misfit).toBeLessThan(1.5);
    expect(verdict.readingsOffC).toBeLessThan(0.5);
    expect(verdict.shift).toBeLessThan(verdict.shiftLimit);
  });

  test('power and lag of the stove are told to within a fifth of what was uncertain, near the truth', () => {
    const changes = new Map(changesBy(defaultKit, learned).map((change) => [change.name, change]));
    for (const name of ['stoveEfficiency', 'stoveLagS'] as const) {
      expect(changes.get(name)?.narrowing).toBeLessThan(0.2);
    }
    const found = centralValues(kit);
    expect(Math.abs(found.stoveEfficiency / cook.values.stoveEfficiency - 1)).toBeLessThan(0.04);
    expect(Math.abs(found.stoveLagS / cook.values.stoveLagS - 1)).toBeLessThan(0.15);
  });

  test('what no thermometer tells stays as open as it was, and it is said what would tell it', () => {
    const open = changesBy(defaultKit, learned).filter(({ toldBy }) => toldBy);
    expect(open.map(({ name }) => name)).toEqual(expect.arrayContaining(['pigmentSecond', 'absorptivity420']));
    for (const { name, toldBy } of open) expect(toldBy).toBe(kitchenNumbers[name]);
  });

  test('draws lie around what was learned, and what goes together in it goes together in them', () => {
    const normal = normalNumbers(1);
    const draws = Array.from({ length: 400 }, () => drawnValues(kit, normal));
    const i = learned.names.indexOf('stoveEfficiency');
    const j = learned.names.indexOf('lossFactor');
    const expected = learned.covariance[i][j] / Math.sqrt(learned.covariance[i][i] * learned.covariance[j][j]);
    expect(Math.abs(expected)).toBeGreaterThan(0.2);
    const logs = draws.map(({ stoveEfficiency, lossFactor }) => [stoveEfficiency, Math.log(lossFactor)]);
    // The standard error of a correlation of 400 draws is 0.05 or less.
    expect(Math.abs(correlation(logs) - expected)).toBeLessThan(0.15);
  });

  test('what is learned survives being kept as JSON', () => {
    expect(JSON.parse(JSON.stringify(learned))).toEqual(learned);
  });
});

function correlation(rows: readonly (readonly number[])[]): number {
  const mean = (k: number) => rows.reduce((sum, row) => sum + row[k], 0) / rows.length;
  const [a, b] = [mean(0), mean(1)];
  const sum = (f: (row: readonly number[]) => number) => rows.reduce((total, row) => total + f(row), 0);
  return sum(([x, y]) => (x - a) * (y - b)) / Math.sqrt(sum(([x]) => (x - a) ** 2) * sum(([, y]) => (y - b) ** 2));
}

describe('a log that is not one whole cook of this kit is told apart, and nothing is learned from it', () => {
  const half = cook.lastS / 2;

  test('Fahrenheit sent as Celsius from the middle on', () => {
    expect(kindsOf(withReadings((valueC, t) => (t > half ? 1.8 * valueC + 32 : valueC)))).toContain('wrongUnit');
  });

  test('an hour without readings', () => {
    expect(kindsOf(withReadings((valueC, t) => (t > half - 1800 && t < half + 1800 ? undefined : valueC)))).toContain(
      'gap',
    );
  });

  test('a probe that hung out of the pan for three minutes', () => {
    const out = (valueC: number, t: number) => {
      const since = t - half;
      return since < 0 || since > 180 ? valueC : 21 + (valueC - 21) * Math.exp(-since / 25);
    };
    expect(kindsOf(withReadings(out))).toContain('probeOut');
  });

  test('a thermometer that stands still for a quarter of an hour while the pan does not', () => {
    let stoodAt: number | undefined;
    const still = (valueC: number, t: number) => {
      if (t < half || t > half + 900) return valueC;
      stoodAt ??= valueC;
      return stoodAt;
    };
    expect(kindsOf(withReadings(still))).toContain('stuck');
  });

  test('a thermometer that shows whole degrees is not taken for one that stands still', () => {
    expect(kindsOf(withReadings((valueC) => Math.round(valueC)))).toEqual([]);
  });

  test('two cooks in one file', () => {
    const other = cookedLog(defaultKit, 3, 'live', 'another');
    expect(kindsOf([...cook.events, ...other.events])).toContain('twoCooks');
    const later = other.events.flatMap((event): KnownEvent[] =>
      event.kind === 'begun'
        ? []
        : [
            {
              ...event,
              cook: cook.events[0].cook,
              device: cook.events[0].device,
              bootId: cook.events[0].bootId,
              deviceSeq: event.deviceSeq + 1e5,
              tMono: event.tMono + 1.2e7,
            },
          ],
    );
    expect(kindsOf([...cook.events, ...later])).toContain('twoCooks');
  });

  test('another pan, a rehearsal, the same cook again, and no setting of the dial', () => {
    expect(kindsOf(cook.events, { ...defaultKit, pan: { ...defaultKit.pan, massKg: 1.4 } })).toEqual(['otherKit']);
    expect(kindsOf(cook.events, kit)).toEqual(['alreadyLearned']);
    expect(kindsOf(cookedLog(defaultKit, 3, 'rehearsal').events)).toEqual(['rehearsal']);
    expect(kindsOf(cook.events.filter(({ kind }) => kind !== 'heat'))).toEqual(['noHeat']);
    expect(kindsOf([])).toEqual(['notBegun']);
  });

  test('a whole cook of this kit has no fault', () => {
    expect(kindsOf(cook.events)).toEqual([]);
  });
});

describe('a log that no kit that was likely can tell is refused, with nothing learned', { timeout: 30_000 }, () => {
  const refusalOf = (events: readonly KnownEvent[]) => {
    const outcome = learnFromLog({ events, kit: defaultKit });
    return outcome.kind === 'refused' ? outcome.verdict : outcome;
  };

  test('a pan that gets hot although the dial was noted at a third of what it was', () => {
    const verdict = refusalOf(
      cook.events.map((event) =>
        event.kind === 'heat' ? { ...event, body: { notch: Math.round(event.body.notch) / 3 } } : event,
      ),
    );
    expect(verdict).toMatchObject({ accepted: false });
  });

  test('a thermometer that shows a quarter too much above the room', () => {
    const verdict = refusalOf(withReadings((valueC) => 21 + 1.25 * (valueC - 21)));
    expect(verdict).toMatchObject({ accepted: false });
  });
});

describe('what was learned', () => {
  test('is forgotten on request, of one thing or of all', () => {
    const left = forgetting(kit, ['thermometer']).learned;
    expect(left?.names).not.toContain('thermometerOffsetC');
    expect(left?.names).toContain('stoveEfficiency');
    expect(forgetting(kit)).toEqual(defaultKit);
  });

  test('no longer holds of a thing that is changed', () => {
    const spooned = keptThrough(kit, { ...kit, spoonM3: 1e-5 });
    expect(spooned.learned?.names).not.toContain('spoonFactor');
    expect(keptThrough(kit, { ...kit, altitudeM: 800 }).learned).toEqual(learned);
  });

  test('is narrowed by a check, and what goes together moves along', () => {
    const before = changesBy(defaultKit, learned).find(({ name }) => name === 'thermometerOffsetC');
    const told = taughtBy(kit, toldOf(kit, 'thermometerOffsetC', { value: 0.3, sd: 0.1 }), {
      ...{ kind: 'check', name: 'boilingWater', observations: 1 },
    });
    const after = changesBy(kit, told).find(({ name }) => name === 'thermometerOffsetC');
    expect(after?.narrowing).toBeLessThan(0.6);
    expect(after?.after.low).toBeLessThan(0.3);
    expect((after?.after.high ?? 0) - (after?.after.low ?? 0)).toBeLessThan(
      (before?.after.high ?? 0) - (before?.after.low ?? 0),
    );
    expect(told.lessons.map(({ kind }) => kind)).toEqual(['cook', 'check']);
  });
});
