/** Which cooks are listed. */
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

export function dayText(begun: string): string {
  return new Date(begun).toLocaleDateString('en-GB', { day: 'numeric', month: 'long', year: 'numeric' });
}
