/** The levers of the field: which numbers of a request may span it, how far, and when in the cook each is pulled. */
import { limits } from '../../advice/limits.ts';
import { requireRange } from '../../matter/range.ts';
import { MOLAR_MASS } from '../../matter/sugars.ts';
import { type PlanRequest, type Route, requestRanges } from '../request.ts';

/** In the order in which the cook meets them: what is met later shares more of the cook. */
export const leverNames = [
  'maltExtractGPerKg',
  'invertMinutes',
  'alkaliGPerKg',
  'brownC',
  'brownMinutes',
  'roastC',
  'roastMinutes',
] as const;
export type Lever = (typeof leverNames)[number];

/** A lever with the values that it is set to: `count` of them, evenly from `low` to `high`. */
export interface Axis {
  readonly lever: Lever;
  readonly low: number;
  readonly high: number;
  readonly count: number;
}

const browned: readonly Lever[] = ['alkaliGPerKg', 'brownC', 'brownMinutes'];
const roasted: readonly Lever[] = ['roastC', 'roastMinutes'];

/** Levers that do something on a route. */
export function leversOf(route: Route): readonly Lever[] {
  return leverNames.filter(
    (lever) => (route !== 'pale' || !browned.includes(lever)) && (route === 'deep' || !roasted.includes(lever)),
  );
}

/** The most alkali that is allowed, g for each kg of sugar. */
function mostAlkaliGPerKg({ alkali }: Pick<PlanRequest, 'alkali'>): number {
  const gPerEq = alkali === 'sodiumHydroxide' ? 1000 * MOLAR_MASS.naoh : 500 * MOLAR_MASS.caoh2;
  return limits.alkaliPerSugar.value * gPerEq;
}

/** How far a lever goes within the limits of safety, for a request whose other numbers stay. */
export function leverRange(lever: Lever, request: PlanRequest): readonly [number, number] {
  const [low, high] = requestRanges[lever];
  if (lever === 'alkaliGPerKg') return [low, Math.min(high, mostAlkaliGPerKg(request))];
  if (lever === 'roastC') return [Math.max(low, request.brownC), limits.roastTemperature.value - 3];
  return [low, high];
}

/** Axes begin where kitchens work: longer holds are possible, but hardly wanted (assumed). */
const usualHigh: Partial<Record<Lever, number>> = {
  maltExtractGPerKg: 40,
  invertMinutes: 120,
  brownMinutes: 45,
  roastMinutes: 20,
};

export function usualAxis(lever: Lever, request: PlanRequest, count: number): Axis {
  const [low, high] = leverRange(lever, request);
  return { lever, low, high: usualHigh[lever] ?? high, count };
}

/** What a kitchen can tell apart: levers are set to whole multiples of it. */
export const leverSteps: Readonly<Record<Lever, number>> = {
  maltExtractGPerKg: 0.5,
  invertMinutes: 1,
  alkaliGPerKg: 0.1,
  brownC: 1,
  brownMinutes: 1,
  roastC: 1,
  roastMinutes: 0.5,
};

/** So much of an axis is shown of what lies past a limit of safety. */
const pastLimitShare = 0.08;

/**
 * The usual axis, on past a limit of safety, so that the limit is seen, and as far as the request's own value. One of its places is the limit
 * itself.
 */
export function openAxis(lever: Lever, request: PlanRequest, count: number): Axis {
  const usual = usualAxis(lever, request, count);
  const [, highest] = requestRanges[lever];
  const [, allowed] = leverRange(lever, request);
  const low = Math.min(usual.low, request[lever]);
  const limited = allowed < highest && usual.high === allowed;
  const places = Math.max(1, Math.round((1 - pastLimitShare) * (count - 1)));
  const past = limited ? low + ((allowed - low) * (count - 1)) / places : usual.high;
  return { ...usual, low, high: Math.min(highest, Math.max(past, request[lever])) };
}

/** The axis as far as its lever may go. */
export function withinLimit(axis: Axis, request: PlanRequest): Axis {
  const [, allowed] = leverRange(axis.lever, request);
  return { ...axis, high: Math.max(axis.low, Math.min(axis.high, allowed)) };
}

/** Place of a value on the axis, 0 to 1; beyond them outside of it. */
export function axisShare({ low, high }: Axis, value: number): number {
  return (value - low) / (high - low);
}

/** The value nearest to a place of the axis that the lever can be set to, within the axis. */
export function settingAt({ lever, low, high }: Axis, share: number): number {
  return Math.min(high, Math.max(low, inSteps(lever, low + share * (high - low))));
}

function inSteps(lever: Lever, value: number): number {
  const step = leverSteps[lever];
  return Number((Math.round(value / step) * step).toPrecision(6));
}

/** Value at a place of the axis, 0 to `count - 1`. */
export function axisValue({ low, high, count }: Axis, at: number): number {
  return count === 1 ? low : low + ((high - low) * at) / (count - 1);
}

/** Largest number of values along an axis. */
const mostValues = 128;

/** @throws RangeError naming what is wrong with the axis */
export function requireAxis({ lever, low, high, count }: Axis): void {
  const [lowest, highest] = requestRanges[lever];
  requireRange(`low end of ${lever}`, low, lowest, highest);
  requireRange(`high end of ${lever}`, high, low, highest);
  requireRange(`number of values of ${lever}`, count, 2, mostValues);
  if (!Number.isInteger(count))
    throw new RangeError(`number of values of ${lever} is ${count}; allowed are whole numbers`);
}
