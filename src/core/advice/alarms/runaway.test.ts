// Alarms on a twin that follows a hidden pan: one left on high heat, and a thermometer that is switched to another unit.
import { expect, test } from 'vitest';
import { createHiddenPan } from '../../pan/hiddenPan.ts';
import { defaultKit } from '../../pan/kit.ts';
import { prepareKit } from '../../pan/preparedKit.ts';
import type { Step } from '../../pan/steps.ts';
import { normalNumbers } from '../../reactions/normal.ts';
import { createTwin } from '../../twin/twin.ts';
import { limits } from '../limits.ts';
import { atTheStart } from '../progress.ts';
import { alarmCatalogue } from './catalogue.ts';
import { conditionsOf } from './conditions.ts';
import { noAlarms, stepAlarms } from './engine.ts';
import { readingDoubt } from './readingDoubt.ts';
import { watchOf } from './watch.ts';

const prepared = prepareKit(defaultKit);
const charge = { sucroseKg: 0.4, waterKg: 0.05, maltExtractKg: 0.0032, citricAcidKg: 0 };
const roast: Step = {
  kind: 'roast',
  bandC: [152, 158],
  end: { heldMinutes: 7 },
  approachNotch: 3,
  holdNotch: 2,
  alkali: [],
  waitS: 0,
};

/** Left at a dial setting: when the scorch alarm first sounds, and when the hidden pan passes the limit. */
function leftAlone(seed: number, notch: number) {
  const truth = createHiddenPan(prepared, charge, normalNumbers(2 * seed));
  const twin = createTwin(prepared, charge, { members: 48, seed });
  const heat = { kind: 'heat', notch } as const;
  truth.perform(heat);
  twin.take({ timeS: 0, deed: heat });
  let alarms = noAlarms;
  let mistaken = 0;
  let readings = 0;
  for (let timeS = 10; timeS < 7200; timeS += 10) {
    truth.moveTo(timeS);
    twin.moveTo(timeS);
    const valueC = truth.reading();
    const taken = twin.take({ timeS, observation: { kind: 'reading', valueC, byHand: false } });
    if (!taken) throw new Error('a reading was not taken');
    const doubt = readingDoubt(taken, valueC);
    readings++;
    if (doubt.otherUnit) mistaken++;
    for (const sent of [1.8 * valueC + 32, (valueC - 32) / 1.8]) {
      expect(readingDoubt(taken, sent).otherUnit?.otherC, `${sent} at ${timeS} s`).toBeCloseTo(valueC, 6);
    }
    const cooking = { twin, kit: defaultKit, steps: [roast], progress: atTheStart };
    const signs = {
      ...{ timeS, receivedS: timeS, usedS: timeS, everyS: 10, byHand: false, lastReadings: [{ valueC, doubt }] },
      ...{ apartK: null, foam: false, touchedS: timeS, freeBytes: null, writeFailed: false },
    };
    const conditions = conditionsOf(watchOf(cooking, signs), alarms);
    alarms = stepAlarms(alarms, { timeS, step: 'roast', conditions, acts: [] });
    if (truth.temperatureC > limits.roastTemperature.value) {
      const first = alarms.history.find(({ alarm, what }) => alarm === 'scorch' && what === 'sounded');
      return { aheadS: first ? timeS - first.timeS : Number.NEGATIVE_INFINITY, mistaken, readings };
    }
  }
  throw new Error('never got hot');
}

test('a pan left on high heat: the alarm leaves the cook time to respond, and no reading is taken for another unit', () => {
  for (const [seed, notch] of [
    [1, 7],
    [2, 5],
    [3, 6],
  ] as const) {
    const { aheadS, mistaken, readings } = leftAlone(seed, notch);
    console.log(
      `pan ${seed} at ${notch}: scorch sounds ${aheadS} s ahead; ${mistaken} of ${readings} readings mistaken`,
    );
    expect(mistaken).toBe(0);
    expect(aheadS).toBeGreaterThanOrEqual(alarmCatalogue.scorch.respondWithinS);
    // Not so early that it would be no news: twice the lead time.
    expect(aheadS).toBeLessThanOrEqual(180);
  }
}, 60_000);
