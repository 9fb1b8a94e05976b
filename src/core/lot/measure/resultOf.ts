/** From what an instrument showed to a figure of the sugar with its error: the one place that knows every way of measuring. */
import type { Reading } from '../note.ts';
import { type Believed, solidsByHydrometer, solidsByRefractometer } from './brix.ts';
import { colourByAbsorbance, colourByComparison, colourByPhoto, type Dry } from './colour.ts';
import type { Estimate } from './estimate.ts';

/** Dry solids, mass share; pH as the dilution had it; specific absorbance at 430 nm of the dry sugar, L/(g cm). */
export const quantities = ['solids', 'ph', 'colour'] as const;
export type Quantity = (typeof quantities)[number];

export type Result =
  | { readonly kind: 'result'; readonly quantity: Quantity; readonly estimate: Estimate }
  /** What was told gives nothing, and why. */
  | { readonly kind: 'none'; readonly quantity: Quantity; readonly why: string };

/** Error of a pH, 1 sd (assumed): a meter that was calibrated, a strip of half units. */
const acidityError = { meter: [0.03, 0.05], strip: [0.2, 0.25] } as const;

function quantityOf({ method }: Reading): Quantity {
  if (method === 'refractometer' || method === 'hydrometer') return 'solids';
  return method === 'acidity' ? 'ph' : 'colour';
}

/** @param known what the method has to know of the sugar beforehand */
export function resultOf(reading: Reading, known: Believed & Dry): Result {
  const quantity = quantityOf(reading);
  try {
    return { kind: 'result', quantity, estimate: estimateOf(reading, known) };
  } catch (error) {
    if (error instanceof RangeError) return { kind: 'none', quantity, why: error.message };
    throw error;
  }
}

function estimateOf(reading: Reading, known: Believed & Dry): Estimate {
  switch (reading.method) {
    case 'refractometer':
      return solidsByRefractometer(reading, known);
    case 'hydrometer':
      return solidsByHydrometer(reading, known);
    case 'acidity': {
      const [readingSd, methodSd] = acidityError[reading.by];
      return { value: reading.ph, readingSd, methodSd };
    }
    case 'absorbance':
      return colourByAbsorbance(reading, known);
    case 'comparison':
      return colourByComparison(reading, known);
    case 'photo':
      return colourByPhoto(reading, known);
  }
}
