/** Turns the dose, or the pale route's hold, until the plan itself gives the colour. */
import { ratingA430 } from '../../colour/rating.ts';
import { stateColour } from '../../colour/stateColour.ts';
import { bracketedRoot } from '../../matter/root.ts';
import type { Course } from '../../pan/course.ts';
import { centralValues } from '../../pan/model.ts';
import type { PreparedKit } from '../../pan/preparedKit.ts';
import { leverRange } from '../field/levers.ts';
import { type Planned, planFor } from '../plan.ts';
import type { Way } from './ways.ts';

/** Near enough, as a share of the colour: an eye tells 2 % at best. */
const nearShare = 0.004;
/** Width of the first bracket, and what a search that finds no better ends at; both of the setting's logarithm. */
const firstBracket = 0.06;
const finest = 1e-3;
/** Shortest hold tried, min. */
const shortest = 1;

type Refused = Extract<Planned, { kind: 'refused' }>;
export type Tuned = Extract<Planned, { kind: 'plan' }> & { readonly a430: number };

/** A430 per cm of a 10 % w/w solution of what a course ends with, in the kit's central values. */
function endA430(course: Course, prepared: PreparedKit): number {
  const { absorptivity420 } = centralValues(prepared.kit);
  return ratingA430(stateColour(course.last, absorptivity420).specific430, 'tenPercentByWeight');
}

/** Three digits: what a pocket scale weighs, and a clock shows. */
const weighable = (value: number): number => Number(value.toPrecision(3));

/** @returns the plan that comes nearest to the colour, or the refusals of the way's own plan */
export function tuned(way: Way, a430: number, prepared: PreparedKit): Tuned | Refused {
  const { request, tuned: name } = way;
  const [least, most] = leverRange(name, request);
  const within = (setting: number): number => Math.min(most, Math.max(least, weighable(setting)));
  const tried: Tuned[] = [];
  let refused: Refused | undefined;

  /** Logarithm of the colour against the aim; 0 when it is near enough, or when a limit of safety bars the way. */
  function off(lnSetting: number): number {
    const planned = planFor({ ...request, [name]: within(Math.exp(lnSetting)) }, prepared);
    if (planned.kind === 'refused') {
      refused = planned;
      return 0;
    }
    const made = { ...planned, a430: endA430(planned.course, prepared) };
    tried.push(made);
    const found = Math.log(made.a430 / a430);
    return Math.abs(found) < nearShare ? 0 : found;
  }

  // Colour grows with dose and time: the root lies between the way's own setting and one end of the range.
  const start = Math.log(within(request[name]));
  const first = off(start);
  const end = Math.log(first < 0 ? most : Math.max(least, shortest));
  let [from, width, before] = [start, firstBracket, first];
  while (before !== 0 && from !== end) {
    const to = Math.abs(end - from) < width ? end : from + Math.sign(end - from) * width;
    const next = off(to);
    if (next * before < 0) {
      bracketedRoot(off, from, to, finest);
      break;
    }
    [from, width, before] = [to, 2 * width, next];
  }
  if (tried.length === 0) return refused as Refused;
  const distance = ({ a430: found }: Tuned): number => Math.abs(Math.log(found / a430));
  return tried.reduce((best, made) => (distance(made) < distance(best) ? made : best));
}
