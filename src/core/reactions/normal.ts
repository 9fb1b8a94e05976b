/** A seeded source of standard normal numbers: the same seed gives the same draws everywhere. */

import { uniformFloat64 } from 'pure-rand/distribution/uniformFloat64';
import { xoroshiro128plus } from 'pure-rand/generator/xoroshiro128plus';

/** Polar method (Marsaglia & Bray 1964, SIAM Rev. 6:260). */
export function normalNumbers(seed: number): () => number {
  const generator = xoroshiro128plus(seed);
  let spare: number | undefined;
  return () => {
    if (spare !== undefined) {
      const value = spare;
      spare = undefined;
      return value;
    }
    for (;;) {
      const x = 2 * uniformFloat64(generator) - 1;
      const y = 2 * uniformFloat64(generator) - 1;
      const s = x * x + y * y;
      if (s > 0 && s < 1) {
        const factor = Math.sqrt((-2 * Math.log(s)) / s);
        spare = y * factor;
        return x * factor;
      }
    }
  };
}
