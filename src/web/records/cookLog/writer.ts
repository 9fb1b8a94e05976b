/** Which of this device's tabs writes a cook's log: one at a time, so that no act is counted twice by two open pages. */
import { leaseWriter } from './leaseWriter.ts';
import { lockWriter } from './lockWriter.ts';

export interface Writer {
  isHere(): boolean;
  /** Makes this tab the one that writes; the other becomes a reader. */
  takeOver(): Promise<void>;
  release(): void;
}

/** The name under which the tab that writes a cook is known to the others, and to the service worker. */
export const writerName = (cook: string) => `umberpan.cook.${cook}`;

/** Settles when it is known whether this tab writes. Over plain http there are no locks, and tabs ask each other. */
export function claimWriter(cook: string, changed: () => void): Promise<Writer> {
  const name = writerName(cook);
  if (navigator.locks !== undefined) return lockWriter(navigator.locks, name, changed);
  return leaseWriter(() => new BroadcastChannel(`${name}.writer`), changed);
}
