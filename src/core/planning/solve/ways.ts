/**
 * Ways to a colour on one route: a coarse grid of cooks over dose and holds, and between its doses the one that gives the colour. The pale
 * route has no alkali: there the inverting hold is what colours.
 */
import { centralValues } from '../../pan/model.ts';
import { createPan } from '../../pan/physics.ts';
import type { PreparedKit } from '../../pan/preparedKit.ts';
import { amountsFor } from '../amounts.ts';
import { createBranches } from '../field/branches.ts';
import { leverRange } from '../field/levers.ts';
import { type Made, madeOf } from '../field/made.ts';
import type { PlanRequest } from '../request.ts';
import { stepsFor } from '../steps.ts';
import { type Taste, tasteNames } from '../taste.ts';

/** The number of the request that is turned until the colour is right. */
export type Tuned = 'alkaliGPerKg' | 'invertMinutes';

export interface Way {
  readonly request: PlanRequest;
  readonly tuned: Tuned;
  /** Expected, read between simulated cooks. */
  readonly a430: number;
  readonly taste: Taste;
}

const doses = 9;
const browns = [5, 15, 25, 40];
const roasts = [1, 3, 6, 10, 16];
const inverts = [10, 20, 35, 60, 100, 140, 180];

/** Numbers ascending, each once. */
const ascending = (list: readonly number[]): number[] => [...new Set(list)].sort((a, b) => a - b);

export function tunedOn({ route }: Pick<PlanRequest, 'route'>): Tuned {
  return route === 'pale' ? 'invertMinutes' : 'alkaliGPerKg';
}

/** The holds tried: the request's own, and some shorter and longer. */
function holds(request: PlanRequest): readonly PlanRequest[] {
  if (request.route === 'pale') return [request];
  const browned = ascending([...browns, request.brownMinutes]).map((brownMinutes) => ({ ...request, brownMinutes }));
  if (request.route === 'bright') return browned;
  const minutes = ascending([...roasts, request.roastMinutes]);
  return browned.flatMap((each) => minutes.map((roastMinutes) => ({ ...each, roastMinutes })));
}

function tunings(request: PlanRequest): readonly number[] {
  if (request.route === 'pale') return inverts;
  const [low, high] = leverRange('alkaliGPerKg', request);
  return Array.from({ length: doses }, (_, i) => low * (high / low) ** (i / (doses - 1)));
}

/**
 * A way for each choice of holds, with the dose (on the pale route the hold) that comes nearest to the colour.
 *
 * @param request with the route; its own numbers hold where they are not tuned
 */
export function waysTo(a430: number, request: PlanRequest, prepared: PreparedKit): readonly Way[] {
  const values = centralValues(prepared.kit);
  const branches = createBranches(createPan(prepared, values), prepared.kit);
  const tuned = tunedOn(request);
  const sucroseKg = request.massKg * (request.form === 'hard' ? 1 : request.syrupSolids);
  const settings = tunings(request);
  const rows = holds(request).map((held) => settings.map((setting) => ({ ...held, [tuned]: setting })));
  const wanted = rows.flat().map((each) => {
    const amounts = amountsFor(each, sucroseKg);
    return { amounts, charge: amounts.charge, steps: stepsFor({ request: each, amounts, prepared, values }) };
  });
  const made = branches.cook(wanted).map((end, i) => (end.poured ? madeOf(end, wanted[i].amounts, values) : undefined));
  return rows.flatMap((row, at) => {
    const line = row.flatMap((each, i) => {
      const one = made[at * settings.length + i];
      return one ? [{ request: each, made: one }] : [];
    });
    return line.length > 0 ? [nearestWay(a430, line, tuned)] : [];
  });
}

interface Tried {
  readonly request: PlanRequest;
  readonly made: Made;
}

/** Reads between two tried settings of a line, or takes the end of it that is nearest. */
function nearestWay(a430: number, line: readonly Tried[], tuned: Tuned): Way {
  const crossing = line.findIndex(({ made }, i) => i > 0 && (made.a430 - a430) * (line[i - 1].made.a430 - a430) <= 0);
  if (crossing < 0) {
    const offOf = ({ made }: Tried): number => Math.abs(Math.log(made.a430 / a430));
    const { request, made } = line.reduce((best, each) => (offOf(each) < offOf(best) ? each : best));
    return { request, tuned, a430: made.a430, taste: made.taste };
  }
  const [below, above] = [line[crossing - 1], line[crossing]];
  const share = Math.log(a430 / below.made.a430) / Math.log(above.made.a430 / below.made.a430) || 0;
  const between = (low: number, high: number): number => low + share * (high - low);
  const lnSetting = between(Math.log(below.request[tuned]), Math.log(above.request[tuned]));
  const taste = Object.fromEntries(
    tasteNames.map((name) => [name, between(below.made.taste[name], above.made.taste[name])]),
  ) as Record<keyof Taste, number>;
  return { request: { ...below.request, [tuned]: Math.exp(lnSetting) }, tuned, a430, taste };
}
