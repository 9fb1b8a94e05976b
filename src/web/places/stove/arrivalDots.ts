/** Times of arrival as heaps of dots, and in words. */
import type { Arrival } from '../../../core/advice/arrival.ts';

export interface Dots {
  /** Each dot at the middle of its bin, min from now, and how many are below it. */
  readonly dots: readonly { readonly rank: number; readonly atMin: number; readonly level: number }[];
  readonly highest: number;
  readonly lastMin: number;
  readonly ticksMin: readonly number[];
}

/** The axis ends at one of these, min. */
const axesMin = [2, 4, 6, 10, 20];

/** @param bins heaps that have room side by side; dots that don't arrive have none */
export function dotsOf({ afterS, withinS }: Arrival, bins: number): Dots {
  const arriving = afterS.filter(Number.isFinite).map((s) => s / 60);
  const latest = arriving.at(-1) ?? withinS / 60;
  const lastMin = axesMin.find((min) => latest < min) ?? withinS / 60;
  const heaps = new Map<number, number>();
  const dots = arriving.map((min, rank) => {
    const bin = Math.min(bins - 1, Math.floor((min / lastMin) * bins));
    const level = heaps.get(bin) ?? 0;
    heaps.set(bin, level + 1);
    return { rank, atMin: ((bin + 0.5) / bins) * lastMin, level };
  });
  return { dots, highest: Math.max(1, ...heaps.values()), lastMin, ticksMin: [0, lastMin / 2, lastMin] };
}

export function arrivalWords({ afterS, withinS, range: { low, high } }: Arrival, goal: string): string {
  const within = `within ${Math.round(withinS / 60)} min`;
  const idle = 'if nothing is done';
  const never = afterS.filter((s) => !Number.isFinite(s)).length;
  if (never === afterS.length) return `Not at ${goal} ${within}, ${idle}.`;
  const late = `${never} of ${afterS.length} dots are missing: not ${within}`;
  if (!Number.isFinite(high)) return `Perhaps not, ${idle}: ${late}.`;
  const [from, to] = [Math.floor(low / 60), Math.ceil(high / 60)];
  const when = from === 0 ? `Within ${Math.max(1, to)} min` : `In ${from} to ${to} min`;
  return `${when}, 8 in 10, ${idle}.${never > 0 ? ` ${late}.` : ''}`;
}
