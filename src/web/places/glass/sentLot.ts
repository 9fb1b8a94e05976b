/** A lot that the Shelf sends to the Glass: which beer it goes into, and what is in that then. */
import { type KeptDose, mostDoses } from '../../../core/beer/keptGlass.ts';
import { freshDraft, type GlassDraft, isFresh } from './draft.ts';
import { sugarOfShelf } from './sugars.ts';

export type Putting =
  | { readonly kind: 'there' }
  /** There is no room for another sugar. */
  | { readonly kind: 'full' }
  | { readonly kind: 'put'; readonly into: GlassDraft; readonly doses: readonly KeptDose[] };

/** Of a sugar that was just put in, kg; to be typed over. */
export const usualDoseKg = 0.2;

/** Into the beer in hand, beside its sugars; into a new one when that is bottled; alone when nothing but the example was there. */
export function puttingIn(draft: GlassDraft, lotId: string): Putting {
  const { bottledOn, doses } = draft.sheet.good;
  if (doses.some(({ sugar }) => sugar.kind === 'lot' && sugar.lotId === lotId)) return { kind: 'there' };
  const dose: KeptDose = { sugar: sugarOfShelf(lotId), massKg: usualDoseKg, added: 'kettle' };
  if (bottledOn !== null) return { kind: 'put', into: freshDraft, doses: [dose] };
  if (isFresh(draft)) return { kind: 'put', into: draft, doses: [dose] };
  if (doses.length >= mostDoses) return { kind: 'full' };
  return { kind: 'put', into: draft, doses: [...doses, dose] };
}
