/**
 * What makes a log unfit to learn a kit from, found in its readings and deeds alone: each would otherwise be taken for a strange stove.
 */
import type { LogEvent } from '../log/event.ts';
import type { CookState } from '../log/fold.ts';
import type { Kit } from '../pan/kit.ts';
import { fits } from './mixedUnits.ts';

export const faultKinds = [
  'notBegun',
  'rehearsal',
  'twoCooks',
  'otherKit',
  'alreadyLearned',
  'noHeat',
  'tooFew',
  'wrongUnit',
  'probeOut',
  'stuck',
  'gap',
] as const;
export type FaultKind = (typeof faultKinds)[number];

export interface Fault {
  readonly kind: FaultKind;
  /** Where in the cook, s from its beginning; null when it is about the whole. */
  readonly timeS: number | null;
  /** The readings before and after, C, or the two values that differ; empty when there are none. */
  readonly values: readonly number[];
}

/** Longest time without a reading in a cook that is learned from, s: deeds may have gone unnoted, too. */
const longestGapS = 600;
/** Fewest readings, and the shortest cook, s, that say anything of a kit. */
const fewestReadings = 20;
const shortestS = 900;
/** No pan warms or cools by more than this between two readings: C, and C for each second between them. */
const jumpC = 15;
const jumpCPerS = 1.5;
/** No pan cools by more than this within a minute without water (250 W of loss from 1 kJ/K gives 15, derived), C. */
const mostCoolingC = 25;
const withinS = 60;
/** Thermometers that send oftener are judged by fewer readings. */
const mostInAMinute = 120;
/** A teaspoon of cold water cools a brown batch by 6-7 C (common practice, no source); twice that for each kg, C. */
const coolingCPerKg = 2600;

/** A thermometer that shows tenths moves within this time over a hot ring; one that shows whole degrees may stand for longer (assumed), s. */
const stillFineS = 240;
const stillCoarseS = 900;
const fineStepC = 0.45;
/** Fewest readings that make a standstill; cold water that has to show, kg, and when at the latest, s. */
const fewestStill = 8;
const cooledByKg = 0.003;
const seenAfterS = 60;

interface Shown {
  readonly timeS: number;
  readonly valueC: number;
}

/**
 * Every fault of a log, in the order of `faultKinds`.
 *
 * @param events the log as it came
 * @param state the same, folded
 * @param kit the kit that is to learn
 */
export function faultsOf(
  events: readonly LogEvent[],
  state: CookState,
  kit: Kit,
  rehearsed: boolean,
): readonly Fault[] {
  const whole = (kind: FaultKind, found: boolean): Fault[] => (found ? [{ kind, timeS: null, values: [] }] : []);
  const { begun } = state;
  if (!begun) return whole('notBegun', true);
  const endS = state.deeds.find(({ kind }) => kind === 'poured')?.timeS ?? Number.POSITIVE_INFINITY;
  const shown = state.readings.flatMap(({ timeS, body: { valueC, quality } }): Shown[] =>
    valueC !== null && ['fresh', 'late', 'byHand'].includes(quality) && timeS <= endS ? [{ timeS, valueC }] : [],
  );
  const cooks = new Set(events.map(({ cook }) => cook));
  const beginnings = new Set(events.flatMap(({ kind, id }) => (kind === 'begun' ? [id] : [])));
  const reached = (shown.at(-1)?.timeS ?? 0) - (shown[0]?.timeS ?? 0);
  return [
    ...whole('rehearsal', state.mode === 'rehearsal' && !rehearsed),
    ...whole('twoCooks', cooks.size > 1 || beginnings.size > 1),
    ...wentOn(state, endS),
    ...cooledBetween(shown),
    ...whole('otherKit', !sameThings(begun.body.kit, kit)),
    ...whole('alreadyLearned', kit.learned?.lessons.some(({ name }) => cooks.has(name)) ?? false),
    ...whole('noHeat', !state.deeds.some(({ kind, timeS }) => kind === 'heat' && timeS <= endS)),
    ...whole('tooFew', shown.length < fewestReadings || reached < shortestS),
    ...wrongUnits(shown),
    ...probeOut(shown, state),
    ...stuck(shown, state),
    ...gaps(shown, endS),
  ];
}

/** The same stove, pan, thermometer and spoon; water, place and room may differ from day to day. */
function sameThings(one: Kit, other: Kit): boolean {
  const things = ({ stove, pan, thermometer, spoonM3 }: Kit) => [
    ...[stove.kind, stove.ratedPowerW, stove.notches],
    ...[pan.material, pan.diameterM, pan.heightM, pan.massKg, thermometer.kind, spoonM3],
  ];
  const others = things(other);
  return things(one).every((thing, i) => thing === others[i]);
}

/** Who turns the ring up or begins a step after the pour has begun another cook. */
function wentOn({ deeds }: CookState, endS: number): Fault[] {
  const again = deeds.find(
    (deed) => deed.timeS > endS && (deed.kind === 'step' || (deed.kind === 'heat' && deed.body.notch > 0)),
  );
  return again ? [{ kind: 'twoCooks', timeS: again.timeS, values: [] }] : [];
}

/** A pan that was hot, stood until it was lukewarm, and got hot again was another one. */
function cooledBetween(shown: readonly Shown[]): Fault[] {
  const hot = shown.findIndex(({ valueC }) => valueC > 100);
  const cool = shown.findIndex(({ valueC }, i) => hot >= 0 && i > hot && valueC < 60);
  const again = shown.findIndex(({ valueC }, i) => cool >= 0 && i > cool && valueC > 90);
  if (again < 0 || shown[again].timeS - shown[cool].timeS < shortestS / 3) return [];
  return [{ kind: 'twoCooks', timeS: shown[cool].timeS, values: [shown[hot].valueC, shown[cool].valueC] }];
}

function wrongUnits(shown: readonly Shown[]): Fault[] {
  return firstOf('wrongUnit', shown, (before, after) => {
    const betweenS = after.timeS - before.timeS;
    const far = Math.abs(after.valueC - before.valueC) > jumpC + jumpCPerS * Math.min(betweenS, 30);
    return far && fits(before.valueC, after.valueC);
  });
}

function probeOut(shown: readonly Shown[], { deeds }: CookState): Fault[] {
  const watered = deeds.flatMap(({ kind, timeS, body }) =>
    kind === 'water' || kind === 'alkali' ? [{ timeS, waterKg: body.waterKg }] : [],
  );
  for (const [i, after] of shown.entries()) {
    const recent = shown.slice(Math.max(0, i - mostInAMinute), i).filter(({ timeS }) => timeS >= after.timeS - withinS);
    const before = recent.toSorted((a, b) => b.valueC - a.valueC)[0];
    if (!before) continue;
    const lately = watered.filter(({ timeS }) => timeS >= before.timeS - withinS && timeS <= after.timeS);
    const addedKg = lately.reduce((sum, { waterKg }) => sum + waterKg, 0);
    if (before.valueC - after.valueC <= mostCoolingC + addedKg * coolingCPerKg) continue;
    if (!fits(before.valueC, after.valueC)) {
      return [{ kind: 'probeOut', timeS: before.timeS, values: [before.valueC, after.valueC] }];
    }
  }
  return [];
}

/** One and the same value for longer than a pan stands still to the last figure, or right through cold water. */
function stuck(shown: readonly Shown[], { deeds }: CookState): Fault[] {
  const heatedS = deeds.find(({ kind, body }) => kind === 'heat' && body.notch > 0)?.timeS ?? Number.POSITIVE_INFINITY;
  const steps = shown.flatMap(({ valueC }, i) => (i > 0 ? Math.abs(valueC - shown[i - 1].valueC) : [])).filter(Boolean);
  const longestS = steps.some((step) => step < fineStepC) ? stillFineS : stillCoarseS;
  for (let first = 0; first < shown.length; ) {
    const { valueC } = shown[first];
    const next = shown.findIndex((one, i) => i > first && one.valueC !== valueC);
    const end = next < 0 ? shown.length : next;
    const [fromS, toS] = [Math.max(shown[first].timeS, heatedS), shown[end - 1].timeS];
    const cooled = deeds.some(
      ({ kind, timeS, body }) =>
        kind === 'water' && body.waterKg >= cooledByKg && timeS >= fromS && timeS + seenAfterS <= toS,
    );
    if (end - first >= fewestStill && (toS - fromS > longestS || cooled)) {
      return [{ kind: 'stuck', timeS: shown[first].timeS, values: [valueC] }];
    }
    first = end;
  }
  return [];
}

function gaps(shown: readonly Shown[], endS: number): Fault[] {
  const closing = Number.isFinite(endS) && shown.length > 0 ? [{ timeS: endS, valueC: Number.NaN }] : [];
  return firstOf('gap', [...shown, ...closing], (before, after) => after.timeS - before.timeS > longestGapS);
}

function firstOf(kind: FaultKind, shown: readonly Shown[], is: (before: Shown, after: Shown) => boolean): Fault[] {
  const i = shown.findIndex((after, k) => k > 0 && is(shown[k - 1], after));
  if (i < 0) return [];
  const values = [shown[i - 1].valueC, shown[i].valueC].filter(Number.isFinite);
  return [{ kind, timeS: shown[i - 1].timeS, values }];
}
