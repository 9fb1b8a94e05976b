/** A value of the page that outlives its views, in the form that `useSyncExternalStore` takes. */
export interface HeldValue<T> {
  now(): T;
  become(next: T): void;
  subscribe(listener: () => void): () => void;
}

export function heldValue<T>(first: T): HeldValue<T> {
  let value = first;
  const listeners = new Set<() => void>();
  return {
    now: () => value,
    become(next) {
      value = next;
      for (const listener of listeners) listener();
    },
    subscribe(listener) {
      listeners.add(listener);
      return () => listeners.delete(listener);
    },
  };
}
