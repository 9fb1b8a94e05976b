/** Forgetting: on request, or because a thing of the kitchen is another one now. */
import type { Kit } from '../pan/kit.ts';
import { without } from '../pan/learned.ts';
import type { ModelParameter } from '../pan/physics.ts';
import { reactionParameters } from '../reactions/parameters.ts';

/** What each thing of the kitchen was learned to be like. */
const aboutThing = {
  stove: ['stoveEfficiency', 'stoveLagS'],
  pan: ['stoveEfficiency', 'lossFactor', 'evaporationFactor', 'thinFilm', 'thickFilm', 'boilConductance'],
  thermometer: ['thermometerOffsetC', 'thermometerLagS'],
  spoon: ['spoonFactor'],
  sugar: [...(Object.keys(reactionParameters) as ModelParameter[]), 'boilingTheta', 'dissolvingS'],
} as const satisfies Record<string, readonly ModelParameter[]>;
export type Thing = keyof typeof aboutThing;
const things = Object.keys(aboutThing) as Thing[];

/** The kit as if nothing had been learned of these things; of nothing at all when none is named. */
export function forgetting(kit: Kit, forgotten?: readonly Thing[]): Kit {
  const { learned, ...plain } = kit;
  if (!learned || !forgotten) return plain;
  const left = without(
    learned,
    forgotten.flatMap((thing) => aboutThing[thing]),
  );
  return left ? { ...plain, learned: left } : plain;
}

/** A changed kit with what still holds of what was learned before the change. */
export function keptThrough(before: Kit, after: Kit): Kit {
  const changed = {
    stove: JSON.stringify(before.stove) !== JSON.stringify(after.stove),
    pan: JSON.stringify(before.pan) !== JSON.stringify(after.pan),
    thermometer: before.thermometer.kind !== after.thermometer.kind,
    spoon: before.spoonM3 !== after.spoonM3,
    sugar: false,
  };
  return forgetting(
    { ...after, learned: before.learned },
    things.filter((thing) => changed[thing]),
  );
}
