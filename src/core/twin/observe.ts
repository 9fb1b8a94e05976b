/** What a person or a thermometer can tell the twin: what each member would expect, how sure the observation is, what it may correct. */

import { ratingA430 } from '../colour/rating.ts';
import { stateColour } from '../colour/stateColour.ts';
import type { ModelValues } from '../pan/physics.ts';
import { pouredKg, stuckSd } from '../pan/poured.ts';
import { contentsKg, place, solidsIn } from '../pan/state.ts';
import type { Group } from './variables.ts';

export type Observation =
  /** The thermometer, C; `byHand` when a person typed what they read, `confirmed` when they vouch for a strange one. */
  | { readonly kind: 'reading'; readonly valueC: number; readonly byHand: boolean; readonly confirmed?: boolean }
  /** Pan contents on a scale, kg, pan taken off. */
  | { readonly kind: 'weight'; readonly contentsKg: number }
  /** All that came out of the pan on a scale, kg: its contents but for what clings to pan and spoon. */
  | { readonly kind: 'yield'; readonly massKg: number }
  /** Colour of a drop against swatches, A430 of a 10 % w/w solution. */
  | { readonly kind: 'spoonColour'; readonly a430: number }
  /** Colour of a weighed dilution by photo or photometer, as A430 of a 10 % w/w solution. */
  | { readonly kind: 'dilutionColour'; readonly a430: number }
  /** pH of a cooled dilution. */
  | { readonly kind: 'dilutionPh'; readonly ph: number }
  /** Solids by refractometer of a dilution, counted back to the syrup, mass fraction. */
  | { readonly kind: 'solids'; readonly solids: number };

/** A member as an observation sees it. */
export interface Seen {
  readonly y: Float64Array;
  readonly values: ModelValues;
  /** Hot pH. */
  readonly ph: number;
  readonly temperatureC: number;
}

interface Instrument {
  readonly groups: readonly Group[];
  /** Standard deviation in the units compared (logarithms for colour). */
  readonly sd: number;
  readonly expected: (seen: Seen) => number;
  readonly observed: number;
}

/** A430 of a 10 % w/w solution of a member's sugar. */
export function a430Of({ y, values }: Pick<Seen, 'y' | 'values'>): number {
  return ratingA430(stateColour(y, values.absorptivity420).specific430, 'tenPercentByWeight');
}

/** Smallest colour told from none, A430. */
const faintest = 1e-3;
const logColour = (seen: Seen): number => Math.log(a430Of(seen) + faintest);

/** Errors: a probe's noise, a person's reading, a scale with the pan, swatches by eye (a factor 1.35), a weighed dilution (1.12), strips (assumed). */
export function instrumentOf(observation: Observation): Instrument {
  switch (observation.kind) {
    case 'reading':
      return {
        groups: ['heat', 'water'],
        sd: observation.byHand ? 0.7 : 0.4,
        expected: ({ y, values }) => y[place.tipC] + values.thermometerOffsetC,
        observed: observation.valueC,
      };
    case 'weight':
      return {
        groups: ['heat', 'water'],
        sd: 0.003,
        expected: ({ y }) => contentsKg(y),
        observed: observation.contentsKg,
      };
    case 'yield':
      return {
        groups: ['heat', 'water'],
        sd: Math.hypot(0.001, stuckSd * observation.massKg),
        expected: ({ y }) => pouredKg(y),
        observed: observation.massKg,
      };
    case 'solids':
      return {
        groups: ['heat', 'water'],
        sd: 0.008,
        expected: ({ y }) => solidsIn(y),
        observed: observation.solids,
      };
    case 'spoonColour':
      return { groups: ['colour'], sd: 0.3, expected: logColour, observed: Math.log(observation.a430 + faintest) };
    case 'dilutionColour':
      return { groups: ['colour'], sd: 0.11, expected: logColour, observed: Math.log(observation.a430 + faintest) };
    case 'dilutionPh':
      return { groups: ['acidity', 'sugars'], sd: 0.4, expected: ({ ph }) => ph, observed: observation.ph };
  }
}
