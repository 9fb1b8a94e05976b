/** What was measured of a cook's finished sugar, as the cook can be learned from it. */
import type { Observation } from '../twin/observe.ts';
import { knownOf } from './known.ts';
import type { Lot } from './lot.ts';
import type { Note } from './note.ts';
import { firstCountKg } from './stock.ts';

export interface LotNoted {
  readonly lot: Pick<Lot, 'expected' | 'weighedKg'>;
  readonly notes: readonly Note[];
}

/**
 * Colour, solids and pH of dilutions of each, and what all of them weigh together, if each was weighed. What clings to the pan is less
 * certain than the water that a weight could tell of: it tells little that the thermometer does not, unless the two contradict each other.
 *
 * @param lots all that were made of the cook
 */
export function taughtByLots(lots: readonly LotNoted[]): readonly Observation[] {
  const weights = lots.flatMap(({ lot, notes }) => lot.weighedKg ?? firstCountKg(notes) ?? []);
  const massKg = weights.reduce((sum, kg) => sum + kg, 0);
  const known = lots.map(({ lot, notes }) => knownOf(lot, notes));
  return [
    ...(weights.length > 0 && weights.length === lots.length ? [{ kind: 'yield', massKg } as const] : []),
    ...known.flatMap(({ figures, colour, solids, ph }): Observation[] => [
      ...(colour ? [{ kind: 'dilutionColour', a430: figures.a430.mid } as const] : []),
      ...(solids ? [{ kind: 'solids', solids: solids.range.mid } as const] : []),
      ...(ph ? [{ kind: 'dilutionPh', ph: ph.range.mid } as const] : []),
    ]),
  ];
}
