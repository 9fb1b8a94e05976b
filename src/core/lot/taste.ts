/** How a sugar tastes, some day: plain words with a strength each, how it feels in the mouth, and what else there is to say. */

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
/** None for a word that was not asked. */
export type Strengths = Readonly<Record<Descriptor, number | null>>;

/** Strength of a descriptor, whole: 0 none, 5 very strong. */
export const strengthRange = [0, 5] as const;

/** How a sugar feels, cold, in the mouth or between the fingers. */
export const textures = [
  'dry snap',
  'hard, sticks to teeth',
  'chewy',
  'soft, sticky',
  'thick syrup',
  'thin syrup',
  'grainy',
] as const;
export type Texture = (typeof textures)[number];

/** What a note may hold, characters. */
export const longestNote = 2000;

/** One word over several tastings. */
export interface Profiled {
  readonly name: Descriptor;
  readonly mean: number;
  readonly least: number;
  readonly most: number;
  /** How often it was asked. */
  readonly count: number;
}

/** Mean and extremes of each word that was asked at least once, in the order of the list. */
export function profileOf(tastings: readonly { readonly strengths: Strengths }[]): readonly Profiled[] {
  return descriptors.flatMap((name) => {
    const given = tastings.map(({ strengths }) => strengths[name]).filter((strength) => strength !== null);
    if (given.length === 0) return [];
    const mean = given.reduce((sum, strength) => sum + strength, 0) / given.length;
    return [{ name, mean, least: Math.min(...given), most: Math.max(...given), count: given.length }];
  });
}
