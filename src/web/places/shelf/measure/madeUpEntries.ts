/** Fields of a sugar that is made up to a volume, and thinned again. */
import { type MadeUp, noteRanges as ranges } from '../../../../core/lot/note.ts';
import type { Entries } from '../../../parts/entry.ts';
import { plainEntry, quantityEntry } from '../../../parts/numberEntry.ts';

export const usualMadeUp: MadeUp = { sugarG: 1, totalMl: 100, fold: 1 };

export const sugarG = <R extends { readonly sugarG: number }>() =>
  quantityEntry<R, 'mass'>({
    label: 'Sugar weighed in',
    range: ranges.sugarG,
    dimension: 'mass',
    unit: 'g',
    scale: 1e-3,
    get: (reading) => reading.sugarG,
    set: (reading, sugarG) => ({ ...reading, sugarG }),
  });

export function madeUpEntries<R extends MadeUp>(): Entries<R> {
  return {
    sugarG: sugarG<R>(),
    totalMl: quantityEntry<R, 'volume'>({
      label: 'Made up to',
      range: ranges.totalMl,
      dimension: 'volume',
      unit: 'mL',
      scale: 1e-6,
      get: ({ totalMl }) => totalMl,
      set: (reading, totalMl) => ({ ...reading, totalMl }),
    }),
    fold: plainEntry<R>({
      label: 'Thinned again',
      hint: '1: not at all; 10: 10 mL made up to 100 mL',
      unit: 'fold',
      range: ranges.fold,
      get: ({ fold }) => fold,
      set: (reading, fold) => ({ ...reading, fold }),
    }),
  };
}
