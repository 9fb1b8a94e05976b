/**
 * The holds of a cook, those of its route and further ones: how hot and how long each may be made by hand, within the limits of safety, and
 * what they are when nobody has touched them.
 */
import { limits, rules } from '../advice/limits.ts';
import {
  defaultRequest,
  type FurtherHold,
  furtherHoldRanges,
  mostFurtherHolds,
  type PlanRequest,
  type Route,
  requestRanges,
} from './request.ts';

export type Hold = 'invert' | 'brown' | 'roast';
/** One of the route's own by its name, a further one by its place, from 0. */
export type HoldPlace = Hold | number;

const holdsByRoute: Readonly<Record<Route, readonly Hold[]>> = {
  pale: ['invert'],
  bright: ['invert', 'brown'],
  deep: ['invert', 'brown', 'roast'],
};

export const holdsOf = ({ route }: Pick<PlanRequest, 'route'>): readonly Hold[] => holdsByRoute[route];

/** All that are held, in the order in which they are. */
export function allHolds(request: PlanRequest): readonly HoldPlace[] {
  return [...holdsOf(request), ...(request.moreHolds ?? []).keys()];
}

export function heldAt(place: HoldPlace, request: PlanRequest): FurtherHold {
  if (typeof place !== 'number') return { celsius: request[`${place}C`], minutes: request[`${place}Minutes`] };
  const further = request.moreHolds?.[place];
  if (!further)
    throw new RangeError(`further hold is ${place}; allowed is 0 to ${(request.moreHolds?.length ?? 0) - 1}`);
  return further;
}

/** Temperature of the hold that a further one comes after, C. */
export function holdBefore(at: number, request: PlanRequest): number {
  const own = holdsOf(request).at(-1) ?? 'invert';
  return heldAt(at > 0 ? at - 1 : own, request).celsius;
}

/** Half the width of a hold's band, K: its upper edge is what a limit is held against. */
const halfBandK = 3;

export interface HoldRange {
  readonly low: number;
  readonly high: number;
  /** The limit of safety that ends it above; nothing where the range of the request does. */
  readonly limit: string | undefined;
}

/** Temperatures that a hold may be set to, C, the request's other numbers staying. */
export function holdRange(place: HoldPlace, request: PlanRequest): HoldRange {
  const range = typeof place === 'number' ? furtherRange(place, request) : ownRange(place, request);
  const isLastOwn = place === holdsOf(request).at(-1);
  const next = request.moreHolds?.[typeof place === 'number' ? place + 1 : 0];
  if (next === undefined || (typeof place !== 'number' && !isLastOwn) || next.celsius >= range.high) return range;
  return { ...range, high: next.celsius, limit: rules.order.id };
}

function ownRange(hold: Hold, request: PlanRequest): HoldRange {
  const [low, high] = requestRanges[`${hold}C`];
  const { alkaliTemperature, roastTemperature } = limits;
  if (hold === 'invert' && request.route !== 'pale') return { low, ...upTo(high, alkaliTemperature) };
  if (hold === 'roast') return { low: Math.max(low, request.brownC), ...upTo(high, roastTemperature) };
  if (hold === 'brown' && request.route === 'deep' && request.roastC < high)
    return { low, high: request.roastC, limit: rules.order.id };
  return { low, high, limit: undefined };
}

function furtherRange(at: number, request: PlanRequest): HoldRange {
  const [low, high] = furtherHoldRanges.celsius;
  return { low: Math.max(low, holdBefore(at, request)), ...upTo(high, limits.roastTemperature) };
}

function upTo(high: number, { id, value }: { readonly id: string; readonly value: number }) {
  const most = value - halfBandK;
  return most < high ? { high: most, limit: id } : { high, limit: undefined };
}

/** A hold hotter and longer by so much, in whole degrees and minutes, and within its limits. */
export function heldBy(place: HoldPlace, request: PlanRequest, kelvin: number, minutes: number): Partial<PlanRequest> {
  const { low, high } = holdRange(place, request);
  const [shortest, longest] = minuteRange(place);
  const now = heldAt(place, request);
  const within = (value: number, from: number, to: number) => Math.min(to, Math.max(from, Math.round(value)));
  const held = {
    celsius: within(now.celsius + kelvin, low, high),
    minutes: within(now.minutes + minutes, shortest, longest),
  };
  if (typeof place === 'number') return { moreHolds: request.moreHolds?.map((each, i) => (i === place ? held : each)) };
  return { [`${place}C`]: held.celsius, [`${place}Minutes`]: held.minutes };
}

function minuteRange(place: HoldPlace): readonly [number, number] {
  return typeof place === 'number' ? furtherHoldRanges.minutes : requestRanges[`${place}Minutes`];
}

/** What a new hold is hotter than the one before it, K, and how long, to be changed at once. */
const newHold = { kelvin: 5, minutes: 5 } as const;

/** With one hold more at the end; nothing when there are as many as there may be. */
export function withFurtherHold(request: PlanRequest): Pick<PlanRequest, 'moreHolds'> | undefined {
  const moreHolds = request.moreHolds ?? [];
  if (moreHolds.length >= mostFurtherHolds) return undefined;
  const added = { ...request, moreHolds: [...moreHolds, { celsius: 0, minutes: newHold.minutes }] };
  const { low, high } = holdRange(moreHolds.length, added);
  const celsius = Math.min(high, Math.max(low, holdBefore(moreHolds.length, request) + newHold.kelvin));
  return { moreHolds: [...moreHolds, { celsius, minutes: newHold.minutes }] };
}

export function withoutFurtherHold(at: number, request: PlanRequest): Pick<PlanRequest, 'moreHolds'> {
  const left = (request.moreHolds ?? []).filter((_, i) => i !== at);
  return { moreHolds: left.length > 0 ? left : undefined };
}

/** What the route's own holds would change of a request; empty when nothing was set by hand. */
export function ownHolds(request: PlanRequest): Partial<PlanRequest> {
  const fields = holdsOf(request).flatMap((hold) => [`${hold}C`, `${hold}Minutes`] as const);
  const changed = fields.filter((field) => request[field] !== defaultRequest[field]);
  return {
    ...Object.fromEntries(changed.map((field) => [field, defaultRequest[field]])),
    ...(request.moreHolds && { moreHolds: undefined }),
  };
}
