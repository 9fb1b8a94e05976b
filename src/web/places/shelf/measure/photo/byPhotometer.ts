/** What photometers alone said of a lot's colour: the other ways know it too badly to teach by. */
import type { NoteRecord } from '../../../../../api/lotNote.ts';
import type { Beforehand } from '../../../../../core/lot/known.ts';
import { combined } from '../../../../../core/lot/measure/estimate.ts';
import { resultOf } from '../../../../../core/lot/measure/resultOf.ts';

/** Specific absorbance at 430 nm of the dry sugar, L/(g cm), and 1 sd as a share of it; none without a reading. */
export function byPhotometer(
  notes: readonly Pick<NoteRecord, 'note'>[],
  known: Beforehand,
): { readonly value: number; readonly sd: number } | undefined {
  const readings = notes.flatMap(({ note }) => {
    if (note.kind !== 'measured' || note.reading.method !== 'absorbance') return [];
    const result = resultOf(note.reading, known);
    return result.kind === 'none' ? [] : [{ ...result.estimate, value: Math.log(result.estimate.value) }];
  });
  if (readings.length === 0) return undefined;
  const { value, sd } = combined([readings]);
  return { value: Math.exp(value), sd };
}
