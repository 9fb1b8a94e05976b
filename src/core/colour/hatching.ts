/** Colour without colour: how close lines of hatching stand on paper, the closer the darker. */
import { ebcFromA430 } from './scales.ts';

const hatchings = [
  { upToEbc: 1, gap: 0 },
  { upToEbc: 10, gap: 11 },
  { upToEbc: 50, gap: 7 },
  { upToEbc: 150, gap: 4.5 },
  { upToEbc: Number.POSITIVE_INFINITY, gap: 3 },
];

/** Distance of the lines for a 10 % solution's A430, in pixels of the drawing; 0 for none. */
export function hatchingGap(a430: number): number {
  return hatchings.find(({ upToEbc }) => ebcFromA430(a430) <= upToEbc)?.gap ?? 0;
}

/** What it means, to be told beside it. */
export const hatchingWords = 'Hatched closer the darker the sugar.';
