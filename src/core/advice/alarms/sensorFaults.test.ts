// Faults of a thermometer that only the twin can see, each put into the readings of a simulated cook: which alarm says so, how
// soon, and that none calls for an act at the pan that the pan does not need.
import { expect, it } from 'vitest';
import { bareCook } from '../../../../test/bareCook.ts';
import { readingAsReceived } from '../../log/readingAsReceived.ts';
import { defaultKit } from '../../pan/kit.ts';
import { prepareKit } from '../../pan/preparedKit.ts';
import type { Step } from '../../pan/steps.ts';
import { rangeOf } from '../../twin/range.ts';
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

/** What is sent of what is shown; null: nothing. */
type Sends = (shownC: number, sinceS: number, atFaultC: number) => number | null;

interface Fault {
  readonly what: string;
  readonly sends: Sends;
  /** What a second thermometer beside it sends of what the first shows. */
  readonly second?: Sends;
  /** The one alarm that says so, and how soon. */
  readonly alarm?: AlarmId;
  readonly withinS?: number;
  readonly lastsS?: number;
}

const asShown: Sends = (shownC) => shownC;
const cooling: Sends = (shownC, sinceS) => roomC + (shownC - roomC) * Math.exp(-sinceS / 20);
const drifting: Sends = (shownC, sinceS) => shownC + sinceS / 30;

const faults: readonly Fault[] = [
  { what: 'nothing wrong', sends: asShown },
  { what: 'no data at all', sends: () => null, alarm: 'probeLost', withinS: 40 },
  { what: 'Fahrenheit as Celsius', sends: (shownC) => 1.8 * shownC + 32, alarm: 'unitMixUp', withinS: 30 },
  { what: 'Celsius as Fahrenheit', sends: (shownC) => (shownC - 32) / 1.8, alarm: 'unitMixUp', withinS: 40 },
  { what: 'stuck', sends: (_, __, atFaultC) => atFaultC, alarm: 'probeDoubtful', withinS: 120 },
  { what: 'out of the syrup', sends: cooling, alarm: 'probeDoubtful', withinS: 60 },
  // The syrup is at 100 C after 310 s, and at 112 C after 360 s.
  {
    what: 'in the steam, at 100 C',
    sends: (shownC) => Math.min(shownC, 100),
    alarm: 'probeDoubtful',
    withinS: 180,
    lastsS: 210,
  },
  { what: 'a step of 12 K that stays', sends: (shownC) => shownC + 12, alarm: 'probeDoubtful', withinS: 60 },
  {
    what: 'on the bottom, hotter and unsteady',
    sends: (shownC, sinceS) => shownC + 3 + Math.sin(sinceS),
    alarm: 'probeDoubtful',
    withinS: 120,
  },
  { what: 'two of them, 0.8 K apart', sends: asShown, second: (shownC) => shownC - 0.8 },
  {
    what: 'two of them, one drifting by 2 K in a minute',
    sends: asShown,
    second: drifting,
    alarm: 'probesApart',
    withinS: 140,
  },
  { what: 'two of them, one out of the syrup', sends: asShown, second: cooling, alarm: 'probesApart', withinS: 90 },
];

/** A climb by these thermometers, with a fault of theirs from the third minute on. */
function climb({ sends, second, lastsS = 150 }: Omit<Fault, 'what'>) {
  let atFaultC: number | undefined;
  const sent = (how: Sends, shownC: number, timeS: number) => {
    if (timeS < faultS || timeS > faultS + lastsS) return shownC;
    atFaultC ??= shownC;
    return how(shownC, timeS - faultS, atFaultC);
  };
  const rehearsal = createRehearsal({
    prepared,
    begun: bareCook(charge, steps, 3),
    members: 64,
    sends: (shownC, timeS) => sent(sends, shownC, timeS),
  });
  rehearsal.perform({ kind: 'heat', notch: 5 });
  const believedC = () => rangeOf(rehearsal.twin.members.map(({ temperatureC }) => temperatureC));
  return {
    rehearsal,
    faultEndS: faultS + lastsS,
    goOnTo(endS: number) {
      while (rehearsal.timeS < endS) {
        const timeS = rehearsal.timeS + readEveryS;
        rehearsal.moveTo(timeS);
        const valueC = second ? sent(second, rehearsal.readingC, timeS) : null;
        if (valueC !== null) rehearsal.say('reading', readingAsReceived('second', valueC, 'Cel'));
      }
    },
    sounded: () => rehearsal.cook.alarms.history.filter(({ what }) => what === 'sounded'),
    offK: () => Math.abs(believedC().mid - rehearsal.hidden.temperatureC),
    bandK: () => believedC().high - believedC().low,
  };
}

/** Two minutes after a fault is over; twice what the twin is off at most on this way up without any, 0.8 K. */
const recoveredS = 120;
const recoveredK = 1.6;

it.each(faults)('$what', ({ what: _, alarm, withinS = 0, ...fault }) => {
  const cook = climb(fault);
  cook.goOnTo(cook.faultEndS);
  const sounded = cook.sounded();
  const first = sounded.find((one) => one.alarm === alarm);
  const faultyK = cook.offK();
  cook.goOnTo(cook.faultEndS + recoveredS);
  console.log(
    `${alarm ?? 'no alarm'} after ${(first?.timeS ?? faultS) - faultS} s; off by ${faultyK.toFixed(1)} K, then ${cook.offK().toFixed(1)} K`,
  );
  // The one that is named, and none that calls for an act at the pan.
  expect(sounded.map((one) => one.alarm)).toEqual(alarm ? [alarm] : []);
  if (first) expect(first.timeS - faultS).toBeLessThanOrEqual(withinS);
  expect(cook.offK()).toBeLessThan(recoveredK);
});

it('without a reading the band of the twin is wide, and is narrow again after two minutes with one', () => {
  const [well, alone] = [climb({ sends: asShown }), climb({ sends: () => null })];
  const bands = (atS: number) => {
    for (const cook of [well, alone]) cook.goOnTo(atS);
    return [well.bandK(), alone.bandK()] as const;
  };
  const [usual, wide] = bands(well.faultEndS);
  const [later, narrow] = bands(well.faultEndS + recoveredS);
  console.log(
    `8 in 10: ${usual.toFixed(1)} K with readings, ${wide.toFixed(1)} K without, then ${narrow.toFixed(1)} K`,
  );
  expect(wide).toBeGreaterThan(3 * usual);
  expect(narrow).toBeLessThan(1.5 * later);
});

it.each([
  ['simulated', 'second'],
  ['second', 'simulated'],
])('of two that drift apart the one that the cook says is wrong counts no more: “%s” is right', (right, wrong) => {
  const how = wrong === 'second' ? { sends: asShown, second: drifting } : { sends: drifting, second: asShown };
  const cook = climb({ ...how, lastsS: 300 });
  cook.goOnTo(faultS + 150);
  expect(cook.sounded().map(({ alarm }) => alarm)).toEqual(['probesApart']);
  cook.rehearsal.say('seen', { alarm: 'probesApart' });
  cook.rehearsal.say('vouched', { probe: right });
  const { timeS } = cook.rehearsal;
  cook.goOnTo(cook.faultEndS);
  const { state, alarms } = cook.rehearsal.cook;
  expect(alarms.states.probesApart.on).toBe(false);
  expect(cook.sounded()).toHaveLength(1);
  const believed = new Set(state.believed.filter((one) => one.timeS > timeS).map(({ body }) => body.probe));
  expect([...believed]).toEqual([right]);
  expect(state.readings.some(({ body, timeS: atS }) => body.probe === wrong && atS > timeS)).toBe(true);
});
