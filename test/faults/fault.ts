// A fault that storage, machine or clock may have, made on purpose; and what came of it.
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';

export interface Fault {
  readonly name: string;
  /** How it is made, as a sentence. */
  readonly how: string;
  /** How often with all the other tests, and how often for the table. */
  readonly tries: { readonly few: number; readonly many: number };
  /** Why it can't be made here; nothing when it can. */
  readonly hindered?: () => string | undefined;
  readonly make: (tries: number) => Promise<Outcome>;
}

export interface Outcome {
  readonly tries: number;
  /** What was lost, doubled, mixed up or not found, one line each. */
  readonly losses: readonly string[];
  /** What else was seen, as a sentence. */
  readonly seen: string;
}

export async function inFolder<T>(work: (folder: string) => Promise<T>): Promise<T> {
  const folder = mkdtempSync(join(tmpdir(), 'umberpan-fault-'));
  try {
    return await work(folder);
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

/** Whole numbers below a limit, the same ones each time. */
export function numbersFrom(seed: number): (below: number) => number {
  let state = seed;
  return (below) => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    return Math.floor((state / 2 ** 32) * below);
  };
}
