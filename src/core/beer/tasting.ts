/** A beer as it tasted, some day: the words of its sugars with a strength each, how it was liked, and what else there was to say. */
import type { Strengths } from '../lot/taste.ts';

/** How it was liked, whole: 0 not at all, 10 could not be better. */
export const likingRange = [0, 10] as const;
/** Age of a beer, weeks since it was bottled. */
export const weeksRange = [0, 1040] as const;

export interface Tasting {
  /** RFC 3339 in UTC. */
  readonly tastedAt: string;
  /** Weeks since the beer was bottled, as counted on that day; none when nobody knows. */
  readonly weeks: number | null;
  readonly strengths: Strengths;
  readonly liking: number | null;
  readonly note: string;
}
