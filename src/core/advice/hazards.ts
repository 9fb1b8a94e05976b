/** What an alkali of a strength is classed as, in words. */
import { anywhere, type Sourced } from './safety.ts';

export interface Hazard extends Sourced {
  readonly word: 'Danger' | 'Warning' | 'Note';
  /** The class in few words, and what it does. */
  readonly named: string;
  readonly says: string;
}

const classification = {
  source: 'EU classification of sodium hydroxide: H314 1A from 5 %, 1B from 2 %, H315 and H319 from 0.5 %; H290',
  date: anywhere.date,
  region: 'EU',
} as const;

/** Of sodium hydroxide, from each strength on, mass fraction; the strongest first. */
const lye: readonly (Hazard & { readonly from: number })[] = [
  {
    id: 'HAZ-LYE-1A',
    from: 0.05,
    word: 'Danger',
    named: 'corrosive 1A',
    says: 'corrosive, category 1A. It burns skin and can blind (H314), and attacks metals (H290).',
    ...classification,
  },
  {
    id: 'HAZ-LYE-1B',
    from: 0.02,
    word: 'Danger',
    named: 'corrosive 1B',
    says: 'corrosive, category 1B. It burns skin and can blind (H314), and attacks metals (H290).',
    ...classification,
  },
  {
    id: 'HAZ-LYE-IRRITANT',
    from: 0.005,
    word: 'Warning',
    named: 'irritant',
    says: 'irritates skin (H315) and eyes (H319).',
    ...classification,
  },
  {
    id: 'HAZ-LYE-WEAK',
    from: 0,
    word: 'Note',
    named: 'below classification',
    says: 'below the strengths that are classed; the solid is corrosive, category 1A.',
    ...classification,
  },
];

/** Of slaked lime, at any strength. */
const lime: Hazard = {
  id: 'HAZ-LIME',
  word: 'Danger',
  named: 'eye damage, skin irritant',
  says: 'damages eyes (H318), irritates skin (H315); its dust irritates the airways (H335).',
  source: 'suppliers’ safety data sheets of calcium hydroxide: H315, H318, H335',
  date: anywhere.date,
  region: 'EU',
};

export const hazards: readonly Hazard[] = [...lye, lime];

/** @param strength mass fraction of the solution or slurry, 0 to 1 */
export function hazardOf(alkali: 'sodiumHydroxide' | 'calciumHydroxide', strength: number): Hazard {
  if (alkali === 'calciumHydroxide') return lime;
  return lye.find(({ from }) => strength >= from) ?? lye[lye.length - 1];
}
