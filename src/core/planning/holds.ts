/** The holds of a route: how hot and how long each may be made by hand, within the limits of safety, and what they are when nobody has touched them. */
import { limits } from '../advice/limits.ts';
import { defaultRequest, type PlanRequest, type Route, requestRanges } from './request.ts';

export type Hold = 'invert' | 'brown' | 'roast';

const holdsByRoute: Readonly<Record<Route, readonly Hold[]>> = {
  pale: ['invert'],
  bright: ['invert', 'brown'],
  deep: ['invert', 'brown', 'roast'],
};

export const holdsOf = ({ route }: Pick<PlanRequest, 'route'>): readonly Hold[] => holdsByRoute[route];

/** Half the width of a hold's band, K: its upper edge is what a limit is held against. */
const halfBandK = 3;

export interface HoldRange {
  readonly low: number;
  readonly high: number;
  /** The limit of safety that ends it above; nothing where the range of the request does. */
  readonly limit: string | undefined;
}

/** Temperatures that a hold may be set to, C, the request's other numbers staying. */
export function holdRange(hold: Hold, request: PlanRequest): HoldRange {
  const [low, high] = requestRanges[`${hold}C`];
  const { alkaliTemperature, roastTemperature } = limits;
  if (hold === 'invert' && request.route !== 'pale') return { low, ...upTo(high, alkaliTemperature) };
  if (hold === 'roast') return { low: Math.max(low, request.brownC), ...upTo(high, roastTemperature) };
  if (hold === 'brown' && request.route === 'deep' && request.roastC < high)
    return { low, high: request.roastC, limit: 'LIM-ORDER' };
  return { low, high, limit: undefined };
}

function upTo(high: number, { id, value }: { readonly id: string; readonly value: number }) {
  const most = value - halfBandK;
  return most < high ? { high: most, limit: id } : { high, limit: undefined };
}

/** A hold hotter and longer by so much, in whole degrees and minutes, and within its limits. */
export function heldBy(hold: Hold, request: PlanRequest, kelvin: number, minutes: number): Partial<PlanRequest> {
  const { low, high } = holdRange(hold, request);
  const [shortest, longest] = requestRanges[`${hold}Minutes`];
  const within = (value: number, from: number, to: number) => Math.min(to, Math.max(from, Math.round(value)));
  return {
    [`${hold}C`]: within(request[`${hold}C`] + kelvin, low, high),
    [`${hold}Minutes`]: within(request[`${hold}Minutes`] + minutes, shortest, longest),
  };
}

/** What the route's own holds would change of a request; empty when nothing was set by hand. */
export function ownHolds(request: PlanRequest): Partial<PlanRequest> {
  const fields = holdsOf(request).flatMap((hold) => [`${hold}C`, `${hold}Minutes`] as const);
  const changed = fields.filter((field) => request[field] !== defaultRequest[field]);
  return Object.fromEntries(changed.map((field) => [field, defaultRequest[field]]));
}
