/** What was read so far, kept over a reload of this tab: a check takes minutes, and a phone may sleep. */
import { useEffect, useState } from 'react';

export function useHeld<T>(key: string, first: T) {
  const [value, setValue] = useState<T>(() => held(key) ?? first);
  useEffect(() => {
    try {
      sessionStorage.setItem(key, JSON.stringify(value));
    } catch {
      // Without storage it lasts as long as the page.
    }
  }, [key, value]);
  return [value, setValue] as const;
}

function held<T>(key: string): T | undefined {
  try {
    return (JSON.parse(sessionStorage.getItem(key) ?? 'null') as T | null) ?? undefined;
  } catch {
    return undefined;
  }
}
