/** The one rehearsal of this page. It outlives the view of it, so that first aid can be looked up and the cook gone on with. */
import { proxy, wrap } from 'comlink';
import type { Refusal } from '../../../../core/advice/limits.ts';
import type { Kit } from '../../../../core/pan/kit.ts';
import type { PlanRequest } from '../../../../core/planning/request.ts';
import { heldValue } from '../../../parts/heldValue.ts';
import { keepRehearsal } from '../../../records/cookLog/keepRehearsal.ts';
import type { Acts } from '../acts.ts';
import { type Cooked, grown } from '../cooked.ts';
import type { Stove } from '../stove.worker.ts';
import type { Told } from '../view.ts';

export type Session =
  | { readonly kind: 'none' }
  | { readonly kind: 'preparing' }
  | { readonly kind: 'refused'; readonly refusals: readonly Refusal[] }
  | { readonly kind: 'failed'; readonly message: string }
  | { readonly kind: 'ready'; readonly cooked: Cooked };

export interface Wanted {
  readonly request: PlanRequest;
  readonly kit: Kit;
  readonly seed: number;
  readonly surprises: boolean;
  readonly speed: number;
}

const worker = wrap<Stove>(new Worker(new URL('../stove.worker.ts', import.meta.url), { type: 'module' }));

const held = heldValue<Session>({ kind: 'none' });
const { become } = held;
export const { subscribe, now: sessionNow } = held;
let turn = 0;
/** The turn of the cook on view. */
let shownTurn = 0;
let key = '';
let early: Told | undefined;

void worker.onTold(
  proxy((told: Told) => {
    if (told.turn !== turn) return;
    const session = sessionNow();
    if (session.kind !== 'ready' || shownTurn !== turn) early = told;
    else become({ kind: 'ready', cooked: grown(session.cooked.planned, session.cooked, told) });
  }),
);

/** Begins a rehearsal, unless one of the same plan is under way. */
export function rehearse(wanted: Wanted, anew = false): void {
  const wantedKey = JSON.stringify([wanted.request, wanted.kit]);
  const { kind } = sessionNow();
  const under = kind === 'ready' || kind === 'preparing';
  if (!anew && under && wantedKey === key) return;
  key = wantedKey;
  void begin(wanted);
}

async function begin({ speed, ...wanted }: Wanted): Promise<void> {
  const mine = ++turn;
  early = undefined;
  if (!waitsOn(wanted.seed)) become({ kind: 'preparing' });
  await worker.setSpeed(speed);
  const opened = await worker.rehearse({ turn: mine, ...wanted });
  if (mine !== turn) return;
  if (opened.kind !== 'ready') return become(opened);
  const told = early ?? (await firstTold());
  if (mine !== turn) return;
  shownTurn = mine;
  become({ kind: 'ready', cooked: grown(opened.planned, undefined, told) });
}

/** The same pan, still cold, stays on view while it is made with surprises or without: what has the focus keeps it. */
function waitsOn(seed: number): boolean {
  const session = sessionNow();
  if (session.kind !== 'ready') return false;
  const { planned, view } = session.cooked;
  return !view.begun && planned.begun.rehearsal?.seed === seed;
}

/** The first telling is sent before the answer, but need not come before it. */
async function firstTold(): Promise<Told> {
  while (!early) await new Promise((resolve) => setTimeout(resolve, 10));
  return early;
}

export const acts: Acts = {
  perform: (deeds) => void worker.perform(deeds),
  say: (kind, body) => void worker.say(kind, body),
  putAside: () => void worker.putAside(),
};

export const clockActs = {
  run: (running: boolean): void => void worker.run(running),
  setSpeed: (speed: number): void => void worker.setSpeed(speed),
  setSlowsForActs: (slows: boolean): void => void worker.setSlowsForActs(slows),
};

/** Keeps the rehearsal in the Book; gives the id that it has there. */
export const keepInBook = async (): Promise<string> => keepRehearsal(await worker.log());
