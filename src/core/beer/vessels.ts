/** How much carbon dioxide a vessel may be asked to hold: limits of safety, with their reasons. */
import { anywhere, practice, type Sourced } from '../advice/safety.ts';

interface Vessel extends Sourced {
  readonly words: string;
  /** From here on with a caution, volumes. */
  readonly cautionFrom: number;
  /** More is refused, volumes. */
  readonly most: number;
  readonly why: string;
}

export const vessels = {
  ordinary: {
    id: 'LIM-BOTTLE',
    words: 'ordinary beer bottles of glass',
    cautionFrom: 3,
    most: 3.5,
    why: 'ordinary bottles are made for about 3 volumes at room temperature, and a bottle that bursts cuts',
    source: `bottle makers rate about 3 volumes (from memory); the limit is prudence, ${practice}`,
    ...anywhere,
  },
  heavy: {
    id: 'LIM-HEAVY-BOTTLE',
    words: 'heavy bottles made for sparkling wine or strong ales, with a cork and wire or a crown cork that fits',
    cautionFrom: 4,
    most: 5,
    why: 'heavy bottles hold more, but their closures, scratches and the heat of a summer do not',
    source: `prudence; ${practice}`,
    ...anywhere,
  },
  keg: {
    id: 'LIM-KEG',
    words: 'a keg or cask with a relief valve',
    cautionFrom: 3.5,
    most: 4,
    why: 'a keg primed beyond this vents or foams, and pours nothing else',
    source: `prudence; ${practice}`,
    ...anywhere,
  },
} as const satisfies Record<string, Vessel>;

export type VesselKind = keyof typeof vessels;

/** Below this beer is flat, above it is no beer: what may be wished at all, volumes. */
export const carbonationRange = [0.5, 5] as const;
