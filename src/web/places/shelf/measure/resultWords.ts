/** What a reading comes to, in words. */
import { ratingA430 } from '../../../../core/colour/rating.ts';
import { type Beforehand, rangeOfResult } from '../../../../core/lot/known.ts';
import { type Quantity, resultOf } from '../../../../core/lot/measure/resultOf.ts';
import type { Reading } from '../../../../core/lot/note.ts';
import { ebcOf, percent, span } from '../../../parts/figures.ts';

type Said =
  | { readonly kind: 'says'; readonly value: string; readonly range: string }
  | { readonly kind: 'none'; readonly why: string };

const show: Readonly<Record<Quantity, (value: number) => string>> = {
  solids: (share) => percent(share, 1),
  ph: (value) => value.toFixed(2),
  colour: (specific430) => ebcOf(ratingA430(specific430, 'tenPercentByWeight')),
};
const named: Readonly<Record<Quantity, (value: string) => string>> = {
  solids: (value) => `${value} solids`,
  ph: (value) => `pH ${value}`,
  colour: (value) => `${value} EBC`,
};

export function resultWords(reading: Reading, known: Beforehand): Said {
  const result = resultOf(reading, known);
  const range = rangeOfResult(result);
  if (result.kind === 'none' || !range) return { kind: 'none', why: result.kind === 'none' ? result.why : '' };
  const of = show[result.quantity];
  return { kind: 'says', value: named[result.quantity](of(range.mid)), range: span(range, of) };
}
