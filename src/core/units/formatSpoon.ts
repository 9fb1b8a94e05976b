/** A spoon as people write it. */
import { formatQuantity } from './formatQuantity.ts';
import { unitNamed } from './unitLookup.ts';

const spoons = ['tsp', 'tbsp', 'metric tsp', 'metric tbsp'] as const;

/** What is written in mL to one decimal can't be told from its spoon more closely than this. */
const sameSpoonShare = 0.005;

/** `1 tsp, 4.9 mL` for a spoon that has a name, `3.5 mL` for one that has none. */
export function formatSpoon(volumeM3: number): string {
  const millilitres = formatQuantity(volumeM3, 'mL', 1);
  const name = spoons.find((spoon) => Math.abs(volumeM3 / unitNamed(spoon).factor - 1) < sameSpoonShare);
  return name === undefined ? millilitres : `1 ${name}, ${millilitres}`;
}
