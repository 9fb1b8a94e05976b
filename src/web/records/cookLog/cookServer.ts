/** What a log asks of the server about its cook. */
import type { StorageState } from '../../../api/cook.ts';
import type { LogEvent, StampedEvent } from '../../../core/log/event.ts';
import { answerTo } from '../answer.ts';
import { openStream } from '../eventStream.ts';
import type { Receipt } from './heldEvent.ts';
import type { AskTime } from './serverClock.ts';

/** A server that has not answered by then may have been stopped in the middle, ms. */
const patienceMs = 10_000;

export interface EventPage {
  readonly events: readonly StampedEvent[];
  readonly lastSeq: number;
  readonly more: boolean;
}

/** What comes over the live stream. */
export interface StreamListener {
  logged(event: StampedEvent): void;
  /** The server has it, but not on its disk yet. */
  pending(event: LogEvent): void;
  beat(beat: { readonly lastSeq: number; readonly storage: StorageState }): void;
  storage(storage: StorageState): void;
  /** The server has less than this device has seen: its store was put back. */
  putBack(): void;
  broken(): void;
}

export interface CookServer {
  begin(begun: LogEvent): Promise<Receipt>;
  send(events: readonly LogEvent[]): Promise<readonly Receipt[]>;
  /** @param limit how many at most; as many as the server gives without it */
  eventsSince(since: number, limit?: number): Promise<EventPage>;
  /** Opens the live stream; gives the way to close it. */
  follow(since: number, listener: StreamListener): () => void;
}

export function cookServer(cook: string): CookServer {
  const address = `/api/cooks/${encodeURIComponent(cook)}`;
  return {
    begin: (begun) =>
      answerTo('/api/cooks', {
        method: 'POST',
        headers: { 'idempotency-key': begun.id },
        body: begun,
        patienceMs,
      }),
    send: (events) => answerTo(`${address}/events`, { method: 'POST', body: events, patienceMs }),
    eventsSince: (since, limit) =>
      answerTo(`${address}/events?since=${since}${limit === undefined ? '' : `&limit=${limit}`}`, { patienceMs }),
    follow: (since, { logged, pending, beat, storage, putBack, broken }) =>
      openStream(`${address}/live?since=${since}`, {
        told: { logged, pending, beat, storage, snapshot: putBack },
        broken,
      }),
  };
}

export const askTime: AskTime = () => answerTo('/api/time', { patienceMs });
