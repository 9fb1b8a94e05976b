/** What was measured of a finished sugar, as a cook can be learned from it. */
import type { Observation } from '../twin/observe.ts';
import { knownOf } from './known.ts';
import type { Lot } from './lot.ts';
import type { Note } from './note.ts';

/**
 * Colour, solids and pH of the dilutions. Not the weight: what stays on pan and spoon is less certain than what the scale would tell of the
 * water, and the solids tell that better.
 */
export function taughtByLot(lot: Pick<Lot, 'expected' | 'weighedKg'>, notes: readonly Note[]): readonly Observation[] {
  const { figures, colour, solids, ph } = knownOf(lot, notes);
  return [
    ...(colour ? [{ kind: 'dilutionColour', a430: figures.a430.mid } as const] : []),
    ...(solids ? [{ kind: 'solids', solids: solids.range.mid } as const] : []),
    ...(ph ? [{ kind: 'dilutionPh', ph: ph.range.mid } as const] : []),
  ];
}
