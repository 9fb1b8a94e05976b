/** The one rehearsal of this page. It outlives the view of it, so that first aid can be looked up and the cook gone on with. */
import { proxy, wrap } from 'comlink';
import type { Refusal } from '../../../core/advice/limits.ts';
import type { Kit } from '../../../core/pan/kit.ts';
import type { Deed, TimedDeed } from '../../../core/pan/steps.ts';
import type { PlanRequest } from '../../../core/planning/request.ts';
import type { Revealing } from './revealing.ts';
import type { Planned, Stove } from './stove.worker.ts';
import type { Ahead, Row, Told, View } from './view.ts';

/** Everything so far of a rehearsal. */
export interface Rehearsed {
  readonly planned: Planned;
  readonly view: View;
  readonly rows: readonly Row[];
  readonly deeds: readonly TimedDeed[];
  readonly ahead: Ahead | undefined;
  /** When the pan was stirred, s: noted, and of no effect in the model, which takes a pan as stirred. */
  readonly stirredS: readonly number[];
  readonly reveal: Revealing | undefined;
}

export type Session =
  | { readonly kind: 'none' }
  | { readonly kind: 'preparing' }
  | { readonly kind: 'refused'; readonly refusals: readonly Refusal[] }
  | { readonly kind: 'failed'; readonly message: string }
  | { readonly kind: 'ready'; readonly rehearsed: Rehearsed };

export interface Wanted {
  readonly request: PlanRequest;
  readonly kit: Kit;
  readonly seed: number;
  readonly speed: number;
}

const worker = wrap<Stove>(new Worker(new URL('./stove.worker.ts', import.meta.url), { type: 'module' }));

let session: Session = { kind: 'none' };
let turn = 0;
let key = '';
let early: Told | undefined;
const listeners = new Set<() => void>();

function become(next: Session): void {
  session = next;
  for (const listener of listeners) listener();
}

function grown(before: Rehearsed, told: Told): Rehearsed {
  return {
    ...before,
    view: told.view,
    rows: told.rows.length > 0 ? [...before.rows, ...told.rows] : before.rows,
    deeds: told.deeds.length > 0 ? [...before.deeds, ...told.deeds] : before.deeds,
    ahead: told.ahead ?? before.ahead,
    reveal: told.reveal,
  };
}

void worker.onTold(
  proxy((told: Told) => {
    if (told.turn !== turn) return;
    if (session.kind === 'ready') become({ kind: 'ready', rehearsed: grown(session.rehearsed, told) });
    else early = told;
  }),
);

export const subscribe = (listener: () => void): (() => void) => {
  listeners.add(listener);
  return () => listeners.delete(listener);
};

export const sessionNow = (): Session => session;

/** Begins a rehearsal, unless one of the same plan is under way. */
export function rehearse(wanted: Wanted, anew = false): void {
  const wantedKey = JSON.stringify([wanted.request, wanted.kit]);
  const under = session.kind === 'ready' || session.kind === 'preparing';
  if (!anew && under && wantedKey === key) return;
  key = wantedKey;
  void begin(wanted);
}

async function begin({ request, kit, seed, speed }: Wanted): Promise<void> {
  const mine = ++turn;
  early = undefined;
  become({ kind: 'preparing' });
  await worker.setSpeed(speed);
  const begun = await worker.begin({ turn: mine, request, kit, seed });
  if (mine !== turn) return;
  if (begun.kind !== 'ready') return become(begun);
  const { planned } = begun;
  const told = early ?? (await firstTold());
  if (mine !== turn) return;
  const empty = { planned, view: told.view, rows: [], deeds: [], ahead: undefined, stirredS: [], reveal: undefined };
  become({ kind: 'ready', rehearsed: grown(empty, told) });
}

/** The first telling is sent before the answer, but need not come before it. */
async function firstTold(): Promise<Told> {
  while (!early) await new Promise((resolve) => setTimeout(resolve, 10));
  return early;
}

export const actions = {
  perform: (deeds: readonly Deed[]): void => void worker.perform(deeds),
  putAside: (): void => void worker.putAside(),
  run: (running: boolean): void => void worker.run(running),
  setSpeed: (speed: number): void => void worker.setSpeed(speed),
  setSlowsForActs: (slows: boolean): void => void worker.setSlowsForActs(slows),
  stir(): void {
    if (session.kind !== 'ready') return;
    const { rehearsed } = session;
    become({ kind: 'ready', rehearsed: { ...rehearsed, stirredS: [...rehearsed.stirredS, rehearsed.view.timeS] } });
  },
};
