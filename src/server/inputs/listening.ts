/** One input as it is listened to: what was heard of it last, and how it does. */
import type { Heard, Input, InputState, InputStatus } from '../../api/input.ts';
import type { MarkedReading } from './intake.ts';
import { mqttSource } from './mqttSource.ts';
import type { OwnBroker } from './ownBroker.ts';
import { serialSource } from './serialSource.ts';
import type { Source, SourceListener } from './source.ts';

/** Silent after three intervals, and not before, s: what an alarm would take for a lost probe. */
const leastSilentS = 15;
const shownLast = 5;

export interface Listening {
  status(): Omit<InputStatus, 'cook'>;
  /** What became of the last reading, where that is worth telling. */
  note(what: string): void;
  stop(): Promise<void>;
}

export interface ListenParts {
  /** What becomes of a reading. */
  readonly take: (raw: Heard['raw'], from: string | undefined) => MarkedReading;
  readonly nowMs: () => number;
  readonly broker: OwnBroker | undefined;
}

export function listenTo(input: Input, { take, nowMs, broker }: ListenParts): Listening {
  let state: InputState = input.on ? 'connecting' : 'off';
  let reason: string | null = null;
  let heard = 0;
  let passedOver = 0;
  let last: readonly Heard[] = [];
  let heardAtMs = Number.NEGATIVE_INFINITY;

  const passOver = (why: string) => {
    passedOver += 1;
    reason = why;
  };
  const listener: SourceListener = {
    value(raw, from) {
      const now = nowMs();
      // Who sends far more often than declared says nothing new.
      if ((now - heardAtMs) / 1000 < input.everyS / 2) return passOver('it sends more often than declared');
      heardAtMs = now;
      heard += 1;
      state = 'hearing';
      reason = null;
      const { reading, fault = null } = take(raw, from);
      const { valueC, quality } = reading;
      last = [{ at: new Date(now).toISOString(), raw, valueC, quality, fault }, ...last].slice(0, shownLast);
    },
    passedOver: passOver,
    state(next, why = '') {
      state = next;
      reason = why || null;
    },
  };

  const source = input.on ? start(input, listener, broker) : undefined;
  const isSilent = () => state === 'hearing' && nowMs() - heardAtMs > 1000 * Math.max(leastSilentS, 3 * input.everyS);
  return {
    status: () => ({ state: isSilent() ? 'silent' : state, reason, heard, passedOver, last: [...last] }),
    note(what) {
      reason = what;
    },
    stop: async () => (await source)?.stop(),
  };
}

function start(input: Input, listener: SourceListener, broker: OwnBroker | undefined): Promise<Source | undefined> {
  const source = input.kind === 'mqtt' ? mqttSource(input, listener, broker) : serialSource(input, listener);
  return source.catch((error: Error) => {
    listener.state('failing', error.message);
    return undefined;
  });
}
