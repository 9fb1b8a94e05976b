/** Whether a real cook is followed by this page: known everywhere, so that its alarms are heard in every place. */
import { useSyncExternalStore } from 'react';

export interface UnderWay {
  readonly id: string;
  readonly name: string;
  readonly over: boolean;
}

let now: UnderWay | undefined;
const listeners = new Set<() => void>();

export const cookUnderWay = {
  set(next: UnderWay): void {
    if (now?.id === next.id && now.over === next.over) return;
    now = next;
    for (const listener of listeners) listener();
  },
};

const subscribe = (listener: () => void): (() => void) => {
  listeners.add(listener);
  return () => listeners.delete(listener);
};

export const useCookUnderWay = (): UnderWay | undefined => useSyncExternalStore(subscribe, () => now);
