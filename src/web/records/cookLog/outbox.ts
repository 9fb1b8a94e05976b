/**
 * Sees the device's own events to the server: in order, again and again until each is acknowledged or refused. Events know
 * their own ids, so what arrived without an answer is sent once more and counts once.
 */
import type { LogEvent } from '../../../core/log/event.ts';
import { ProblemError } from '../answer.ts';
import type { Receipt } from './heldEvent.ts';

/** As many as the server takes together. */
export const sentTogether = 500;

/** What is wrong with an event itself will be wrong the next time too; all else may pass. */
const refusals = [400, 409, 413, 422];

export interface OutboxParts {
  /** In the order in which they have to go. */
  waiting(): readonly LogEvent[];
  begin(begun: LogEvent): Promise<Receipt>;
  send(events: readonly LogEvent[]): Promise<readonly Receipt[]>;
  acknowledged(receipts: readonly Receipt[]): Promise<void>;
  refused(event: LogEvent, words: string): Promise<void>;
  /** The server does not know the cook. */
  cookUnknown(): Promise<void>;
  /** Nothing went there, and is tried again. */
  failed(error: unknown): void;
}

/** Gives the way to send what waits: call it whenever there is reason to hope. */
export function outbox(parts: OutboxParts): () => Promise<void> {
  let running: Promise<void> | undefined;
  let askedAgain = false;

  async function run() {
    do {
      askedAgain = false;
      await sendAll();
    } while (askedAgain && parts.waiting().length > 0);
  }

  async function sendAll() {
    for (let batch = nextBatch(); batch.length > 0; batch = nextBatch()) {
      if (!(await deliver(batch))) return;
    }
  }

  function nextBatch(): readonly LogEvent[] {
    const waiting = parts.waiting();
    return waiting.slice(0, waiting[0]?.kind === 'begun' ? 1 : sentTogether);
  }

  /** @returns whether to go on */
  async function deliver(batch: readonly LogEvent[]): Promise<boolean> {
    try {
      const receipts = batch[0].kind === 'begun' ? [await parts.begin(batch[0])] : await parts.send(batch);
      await parts.acknowledged(receipts);
      return receipts.length > 0;
    } catch (error) {
      const status = error instanceof ProblemError ? error.problem.status : undefined;
      if (status === 404) await parts.cookUnknown();
      if (status === undefined || !refusals.includes(status)) {
        parts.failed(error);
        return false;
      }
      if (batch.length === 1) {
        await parts.refused(batch[0], (error as ProblemError).message);
        return true;
      }
      // All go in or none: by halves, until the one that is refused stands alone.
      const half = batch.length >> 1;
      return (await deliver(batch.slice(0, half))) && deliver(batch.slice(half));
    }
  }

  return () => {
    askedAgain = running !== undefined;
    running ??= run().finally(() => {
      running = undefined;
    });
    return running;
  };
}
