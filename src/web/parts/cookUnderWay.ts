/** Whether a real cook is followed by this page: known everywhere, so that its alarms are heard in every place. */
import { useSyncExternalStore } from 'react';
import { heldValue } from './heldValue.ts';

export interface UnderWay {
  readonly id: string;
  readonly name: string;
  readonly over: boolean;
}

const held = heldValue<UnderWay | undefined>(undefined);

export const cookUnderWay = {
  set(next: UnderWay): void {
    const now = held.now();
    if (now?.id !== next.id || now.over !== next.over) held.become(next);
  },
};

export const useCookUnderWay = (): UnderWay | undefined => useSyncExternalStore(held.subscribe, held.now);
