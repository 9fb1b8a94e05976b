/**
 * What an alkali of a strength is classed as, in words. Sodium hydroxide: EU classification by concentration; slaked lime:
 * H315, H318, H335 on safety data sheets. The classes themselves come from the core; ids as in Care.
 */
import type { LyeClass } from '../../../core/advice/limits.ts';
import type { Alkali } from '../../../core/planning/request.ts';

export interface Hazard {
  readonly word: 'Danger' | 'Warning' | 'Note';
  readonly says: string;
}

const lye: Readonly<Record<LyeClass, Hazard>> = {
  'corrosive 1A': {
    word: 'Danger',
    says: 'corrosive, category 1A. It burns skin and can blind (H314), and attacks metals (H290).',
  },
  'corrosive 1B': {
    word: 'Danger',
    says: 'corrosive, category 1B. It burns skin and can blind (H314), and attacks metals (H290).',
  },
  irritant: { word: 'Warning', says: 'irritates skin (H315) and eyes (H319).' },
  'below classification': {
    word: 'Note',
    says: 'below the strengths that are classed; the solid is corrosive, category 1A.',
  },
};

const lime: Hazard = {
  word: 'Danger',
  says: 'damages eyes (H318), irritates skin (H315); its dust irritates the airways (H335).',
};

export function hazardOf(alkali: Alkali, strengthClass: LyeClass): Hazard {
  return alkali === 'sodiumHydroxide' ? lye[strengthClass] : lime;
}
