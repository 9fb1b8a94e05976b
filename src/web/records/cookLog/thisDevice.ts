/** What all logs of this page share: the clocks of the device it is on. */
import type { EventBodies, EventKind } from '../../../core/log/bodies.ts';
import { makeEvent } from '../../../core/log/makeEvent.ts';
import type { EventDraft } from './cookStore.ts';
import { browserClocks, type Clocks, deviceClock } from './deviceClock.ts';
import { type AskTime, serverClock } from './serverClock.ts';

export interface Device {
  /** What each clock says has passed, when they went apart since the last look. */
  look(): EventBodies['clock'] | null;
  draft<K extends EventKind>(cook: string, kind: K, body: EventBodies[K]): EventDraft;
  /** The server's time as far as it is known here, ms since 1970. */
  nowMs(): number;
  /** Measures how far the clock is off the server's. */
  measure(): Promise<void>;
}

export function device(askTime: AskTime, clocks: Clocks = browserClocks): Device {
  const own = deviceClock(clocks);
  const server = serverClock(askTime, clocks);
  return {
    look() {
      const jump = own.look();
      if (jump) server.forget();
      return jump;
    },
    draft(cook, kind, body) {
      const sample = server.sample();
      const making = {
        cook,
        wallMs: clocks.wallMs(),
        tMono: clocks.monoMs(),
        bootId: own.bootId(),
        clockOffsetMs: sample?.clockOffsetMs ?? null,
        clockErrMs: sample?.clockErrMs ?? null,
        tz: Intl.DateTimeFormat().resolvedOptions().timeZone,
        random: crypto.getRandomValues(new Uint8Array(10)),
      };
      return makeEvent(making, kind, body);
    },
    nowMs: () => clocks.wallMs() + (server.sample()?.clockOffsetMs ?? 0),
    measure: server.measure,
  };
}
