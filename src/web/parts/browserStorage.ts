/** Small things this browser remembers. Storage may be full or refused: then they last as long as the page. */

export function kept(key: string): string | null {
  try {
    return localStorage.getItem(key);
  } catch {
    return null;
  }
}

export function keep(key: string, value: string): void {
  try {
    localStorage.setItem(key, value);
  } catch {
    // Nothing is lost but the memory of it after a reload.
  }
}
