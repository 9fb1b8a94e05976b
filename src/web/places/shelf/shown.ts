/** A lot in words and figures, as every part of the Shelf says them. */
import type { LotRecord } from '../../../api/lot.ts';
import { type Known, knownOf } from '../../../core/lot/known.ts';
import type { Note } from '../../../core/lot/note.ts';
import { grams } from '../../parts/figures.ts';
import { likelyHueIndex, type Tone } from '../../parts/syrupPaint.ts';

export interface Shown extends LotRecord {
  readonly known: Known;
}

export function shownOf(record: LotRecord): Shown {
  return { ...record, known: knownOf(record.lot, notesIn(record)) };
}

function notesIn({ notes }: Pick<LotRecord, 'notes'>): readonly Note[] {
  return notes.map(({ note }) => note);
}

export function toneOf({ figures }: Known): Tone {
  const a430 = figures.a430.mid;
  return { a430, hueIndex: likelyHueIndex(a430), waterShare: Math.min(1, figures.waterShare.mid) };
}

/** Of what was made; more than all of it where some was added. */
export function shareLeft({ stock, madeKg }: Known): number {
  return madeKg.mid > 0 ? Math.min(1, stock.kg / madeKg.mid) : 0;
}

export function massWords(kg: number): string {
  return kg < 1 ? `${grams(kg)} g` : `${kg.toFixed(2)} kg`;
}

export const formWords = { hard: 'hard', syrup: 'syrup' } as const;
export const originWords = {
  cooked: 'cooked here',
  rehearsed: 'from a rehearsal',
  told: 'written in by hand',
} as const;

/** `today`, `12 days`, `5 months`, `2 years`. */
export function ageOf(madeAt: string, now: Date): string {
  const days = Math.floor((now.getTime() - Date.parse(madeAt)) / 86_400_000);
  if (days < 1) return 'made today';
  if (days < 60) return `${days} ${days === 1 ? 'day' : 'days'} old`;
  if (days < 730) return `${Math.floor(days / 30.44)} months old`;
  return `${Math.floor(days / 365.25)} years old`;
}
