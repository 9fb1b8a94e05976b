/** What there is of a lot: what was made of it, counted, taken and added since. */
import type { Note, Stocked } from './note.ts';

export interface Stock {
  readonly kg: number;
  /** 1 sd: of a count, the scale's; otherwise that of what was made. */
  readonly sd: number;
  /** Less than a gram is left, because somebody said so. */
  readonly usedUp: boolean;
}

/** A kitchen scale, 1 sd, kg (assumed: divisions of 1 g, and a tray that was weighed too). */
export const scaleSdKg = 0.001;
const leftKg = 0.001;

/** What was made of a lot that was put on the scale before anything was taken of it, kg. */
export function firstCountKg(notes: readonly Note[]): number | undefined {
  const [first] = movesIn(notes);
  return first?.how === 'counted' && first.kg > leftKg ? first.kg : undefined;
}

/** In the order of their days. */
function movesIn(notes: readonly Note[]): readonly Stocked[] {
  return notes.filter((note) => note.kind === 'stocked').toSorted((a, b) => a.at.localeCompare(b.at));
}

/** @param made what was made of it, kg, and its error */
export function stockOf(made: { readonly kg: number; readonly sd: number }, notes: readonly Note[]): Stock {
  const moves = movesIn(notes);
  const { kg, sd } = moves.reduce(moved, made);
  return { kg: Math.max(0, kg), sd, usedUp: moves.length > 0 && kg < leftKg };
}

function moved({ kg, sd }: { readonly kg: number; readonly sd: number }, { how, kg: by }: Stocked) {
  if (how === 'counted') return { kg: by, sd: scaleSdKg };
  return { kg: how === 'took' ? kg - by : kg + by, sd };
}
