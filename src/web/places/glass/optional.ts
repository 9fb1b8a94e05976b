/** A field that may stay empty. */
import type { Entry } from '../../parts/entry.ts';

export function optional<T>(entry: Entry<T>, isNone: (of: T) => boolean, toNone: (into: T) => T): Entry<T> {
  return {
    ...entry,
    show: (of) => (isNone(of) ? '' : entry.show(of)),
    put: (into, text) => (text.trim() === '' ? toNone(into) : entry.put(into, text)),
  };
}
