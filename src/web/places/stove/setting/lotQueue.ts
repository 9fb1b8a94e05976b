/**
 * Lots on their way to the server. Each is written down on this device before it is sent, and is struck out when the server has it; its
 * id is the request's key, so that one sent twice is kept once.
 */
import type { NewLot } from '../../../../api/lot.ts';
import { ProblemError } from '../../../records/answer.ts';

export interface WaitingLot {
  readonly id: string;
  readonly lot: NewLot;
  /** Why the server will not take it; it is not sent again. */
  readonly refused?: string;
}

export interface QueueState {
  readonly waiting: readonly WaitingLot[];
  /** Ids that this page could not write down: gone when it is closed. */
  readonly onlyHere: readonly string[];
  readonly sending: boolean;
}

export interface LotQueue {
  state(): QueueState;
  subscribe(listener: () => void): () => void;
  /** Writes a lot down and sends what waits. */
  add(id: string, lot: NewLot): Promise<void>;
  /** Sends what waits, the oldest first, as far as the server can be reached. */
  send(): Promise<void>;
}

interface Means {
  /** What is written down; null when nothing is. */
  read(): string | null;
  write(text: string): void;
  /** @throws TypeError when the server is not reached, ProblemError when it says no */
  post(id: string, lot: NewLot): Promise<unknown>;
}

export function createLotQueue({ read, write, post }: Means): LotQueue {
  const listeners = new Set<() => void>();
  let onlyHere: readonly WaitingLot[] = [];
  /** Even if striking one out should fail, it is not sent for ever. */
  const sent = new Set<string>();
  let sending = false;
  let state = look();

  function look(): QueueState {
    const waiting = [...written(read()), ...onlyHere].filter(({ id }) => !sent.has(id));
    return { waiting, onlyHere: onlyHere.map(({ id }) => id), sending };
  }

  function changed(): void {
    state = look();
    for (const listener of listeners) listener();
  }

  /** Another page of this browser may have written meanwhile: the list is read anew for each change. */
  function change(make: (waiting: readonly WaitingLot[]) => readonly WaitingLot[]): void {
    write(JSON.stringify(make(written(read()))));
    const kept = written(read());
    onlyHere = make(onlyHere).filter(({ id }) => !kept.some((each) => each.id === id));
    changed();
  }

  /** @returns whether to go on to the next */
  async function sendOne({ id, lot }: WaitingLot): Promise<boolean> {
    try {
      await post(id, lot);
      sent.add(id);
      change((waiting) => waiting.filter((each) => each.id !== id));
      return true;
    } catch (error) {
      if (!isRefusal(error)) return false;
      const refused = error.message;
      change((waiting) => waiting.map((each) => (each.id === id ? { ...each, refused } : each)));
      return true;
    }
  }

  async function send(): Promise<void> {
    if (sending) return;
    sending = true;
    changed();
    try {
      for (let next = unsent(); next && (await sendOne(next)); ) next = unsent();
    } finally {
      sending = false;
      changed();
    }
  }

  const unsent = (): WaitingLot | undefined => look().waiting.find(({ refused }) => refused === undefined);

  return {
    state: () => state,
    subscribe(listener) {
      listeners.add(listener);
      return () => listeners.delete(listener);
    },
    add(id, lot) {
      change((waiting) => [...waiting, { id, lot }]);
      return send();
    },
    send,
  };
}

/** Said of the device that sends, or of the moment: the same lot may be taken later. */
const passing = [401, 403, 429];

/** The server looked at it and won't have it; a server that is busy or failing may later. */
function isRefusal(error: unknown): error is ProblemError {
  return error instanceof ProblemError && error.problem.status < 500 && !passing.includes(error.problem.status);
}

function written(text: string | null): readonly WaitingLot[] {
  try {
    const list: unknown = JSON.parse(text ?? '[]');
    return Array.isArray(list) ? list : [];
  } catch {
    return [];
  }
}
