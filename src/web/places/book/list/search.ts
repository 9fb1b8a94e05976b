/** Which cooks are listed, and in which order. */
import type { LikedCook } from '../../../../core/beer/liked.ts';
import { dayText } from '../../../parts/dayText.ts';
import type { Entry } from './useBook.ts';

export const shownKinds = ['all', 'live', 'rehearsal'] as const;
export type ShownKind = (typeof shownKinds)[number];

/** Every word of the search must be in the name or the day; letters count the same large and small. */
export function found(entries: readonly Entry[], words: string, kind: ShownKind): readonly Entry[] {
  const wanted = words.toLowerCase().split(/\s+/).filter(Boolean);
  return entries.filter(({ cook }) => {
    if (kind !== 'all' && cook.mode !== kind) return false;
    const text = `${cook.name} ${dayText(cook.begun)} ${cook.begun.slice(0, 10)}`.toLowerCase();
    return wanted.every((word) => text.includes(word));
  });
}

export type Order = 'newest' | 'liked';

/** By the middle of how a cook's beers are liked; those without tasted beers stay as they come, after the others. */
export function ordered(
  entries: readonly Entry[],
  order: Order,
  liked: (cookId: string) => LikedCook | undefined,
): readonly Entry[] {
  if (order === 'newest') return entries;
  const middle = ({ cook }: Entry): number => liked(cook.id)?.liking.mid ?? -1;
  return entries.toSorted((a, b) => middle(b) - middle(a));
}
