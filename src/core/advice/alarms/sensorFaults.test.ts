// Faults of a thermometer that only the twin can see, each put into the readings of a simulated cook: which alarm says so, how
// soon, and that none calls for an act at the pan that the pan does not need.
import { expect, it } from 'vitest';
import { bareCook } from '../../../../test/bareCook.ts';
import { defaultKit } from '../../pan/kit.ts';
import { prepareKit } from '../../pan/preparedKit.ts';
import type { Step } from '../../pan/steps.ts';
import { createRehearsal, readEveryS } from '../rehearsal.ts';
import type { AlarmId } from './catalogue.ts';

const prepared = prepareKit(defaultKit);
const charge = { sucroseKg: 0.4, waterKg: 0.08, maltExtractKg: 0.0032, citricAcidKg: 0 };
const plain = { alkali: [], waitS: 0 } as const;
const steps: readonly Step[] = [
  { ...plain, kind: 'dissolve', bandC: [21, 106], end: { reachedC: 106 }, approachNotch: 5, holdNotch: 1 },
  { ...plain, kind: 'climb', bandC: [106, 127], end: { reachedC: 127 }, approachNotch: 5, holdNotch: 1 },
];
const faultS = 180;
const { roomC } = defaultKit;

type Sends = (shownC: number, sinceS: number, atFaultC: number) => number | null;
const faults: readonly (readonly [what: string, sends: Sends, alarm: AlarmId | undefined, withinS: number])[] = [
  ['nothing wrong', (shownC) => shownC, undefined, 0],
  ['no data at all', () => null, 'probeLost', 40],
  ['Fahrenheit as Celsius', (shownC) => 1.8 * shownC + 32, 'unitMixUp', 30],
  ['Celsius as if it were Fahrenheit', (shownC) => (shownC - 32) / 1.8, 'unitMixUp', 40],
  ['stuck', (_, __, atFaultC) => atFaultC, 'probeDoubtful', 120],
  ['out of the syrup', (shownC, sinceS) => roomC + (shownC - roomC) * Math.exp(-sinceS / 20), 'probeDoubtful', 60],
  ['a step of 12 K that stays', (shownC) => shownC + 12, 'probeDoubtful', 60],
];

it.each(faults)('%s', (_, sends, alarm, withinS) => {
  let atFaultC: number | undefined;
  const rehearsal = createRehearsal({
    prepared,
    begun: bareCook(charge, steps, 3),
    members: 64,
    sends(shownC, timeS) {
      if (timeS < faultS) return shownC;
      atFaultC ??= shownC;
      return sends(shownC, timeS - faultS, atFaultC);
    },
  });
  rehearsal.perform({ kind: 'heat', notch: 5 });
  for (let timeS = readEveryS; timeS <= faultS + 150; timeS += readEveryS) rehearsal.moveTo(timeS);
  const sounded = rehearsal.cook.alarms.history.filter(({ what }) => what === 'sounded');
  const heard = sounded.map((one) => one.alarm);
  expect(heard.filter((id) => id === 'scorch' || id === 'foam')).toEqual([]);
  if (alarm === undefined) return expect(heard).toEqual([]);
  const first = sounded.find((one) => one.alarm === alarm);
  console.log(`${alarm} after ${(first?.timeS ?? Number.NaN) - faultS} s; all heard: ${heard.join(', ')}`);
  expect((first?.timeS ?? Number.POSITIVE_INFINITY) - faultS).toBeLessThanOrEqual(withinS);
});
