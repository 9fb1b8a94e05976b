/** A beer as it tasted, some day: plain words with a strength each, how it was liked, and what else there was to say. */

/** Words that a person without training knows; each is marked for its own strength. */
export const descriptors = [
  'dried fruit',
  'cherry',
  'toffee',
  'caramel',
  'nut',
  'coffee',
  'cocoa',
  'burnt',
  'bitter',
  'mineral',
  'sweet',
] as const;

export type Descriptor = (typeof descriptors)[number];

/** Strength of a descriptor, whole: 0 none, 5 very strong. */
export const strengthRange = [0, 5] as const;
/** How it was liked, whole: 0 not at all, 10 could not be better. */
export const likingRange = [0, 10] as const;
/** Age of a beer, weeks since it was bottled. */
export const weeksRange = [0, 1040] as const;

export interface Tasting {
  /** RFC 3339 in UTC. */
  readonly tastedAt: string;
  /** Weeks since the beer was bottled, as counted on that day; none when nobody knows. */
  readonly weeks: number | null;
  /** None for a word that was not asked. */
  readonly strengths: Readonly<Record<Descriptor, number | null>>;
  readonly liking: number | null;
  readonly note: string;
}

/** What the note may hold, characters. */
export const longestNote = 2000;
