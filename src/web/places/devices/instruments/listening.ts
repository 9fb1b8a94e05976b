/** The thermometer that this page listens to. It outlives the views: readings go on while something else is looked up. */
import type { Reading } from '../../../../core/log/bodies.ts';
import { markReading, noMemory, type ReadingFault } from '../../../../core/log/markReading.ts';
import { readingAsReceived } from '../../../../core/log/readingAsReceived.ts';
import { heldValue } from '../../../parts/heldValue.ts';
import type { Instrument, Shown } from './instrument.ts';

export interface ListeningState {
  readonly name: string;
  readonly reading: Reading | undefined;
  readonly fault: ReadingFault | undefined;
  readonly lost: string | undefined;
}

type Sink = (reading: Reading) => void;

/** The twin wants no more, and a log should not be filled with less, ms. */
const leastApartMs = 2000;

const held = heldValue<ListeningState | undefined>(undefined);
export const { subscribe, now: listeningNow } = held;
let leave = () => {};
let sink: Sink | undefined;

/** Where readings go, beside the screen. */
export function readingsGoTo(next: Sink | undefined): void {
  sink = next;
}

export function listenTo({ name, listen }: Instrument): void {
  leave();
  let memory = noMemory;
  let takenMs = Number.NEGATIVE_INFINITY;
  held.become({ name, reading: undefined, fault: undefined, lost: undefined });
  const take = ({ raw, unit }: Shown) => {
    const nowMs = performance.now();
    if (nowMs - takenMs < leastApartMs) return;
    takenMs = nowMs;
    const marked = markReading(memory, readingAsReceived(name.slice(0, 40), raw, unit), nowMs / 1000);
    memory = marked.memory;
    held.become({ name, reading: marked.reading, fault: marked.fault, lost: undefined });
    sink?.(marked.reading);
  };
  const lose = (lost: string) => {
    const state = held.now();
    if (state) held.become({ ...state, lost });
  };
  leave = listen(take, lose);
}

export function stopListening(): void {
  leave();
  leave = () => {};
  held.become(undefined);
}
