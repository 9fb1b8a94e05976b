/** The way to the planning worker: never more than one question under way, and of those that wait only the newest. */
import { proxy, wrap } from 'comlink';
import type { Kit } from '../../../core/pan/kit.ts';
import type { PlanRequest } from '../../../core/planning/request.ts';
import type { Found, Outcome, Planner, Told, Wish } from './planner.worker.ts';

export interface Listener {
  planned(outcome: Outcome, turn: number): void;
  forecast(told: Told): void;
}

const worker = wrap<Planner>(new Worker(new URL('./planner.worker.ts', import.meta.url), { type: 'module' }));

let turn = 0;
let listener: Listener | undefined;
let waiting: { readonly turn: number; readonly request: PlanRequest; readonly kit: Kit } | undefined;
let busy = false;

void worker.onForecast(proxy((told: Told) => told.turn === turn && listener?.forecast(told)));

/** Who hears the answers; returns how to stop. */
export function listen(to: Listener): () => void {
  listener = to;
  return () => {
    if (listener === to) listener = undefined;
  };
}

export function ask(request: PlanRequest, kit: Kit): void {
  waiting = { turn: ++turn, request, kit };
  if (!busy) void answerAll();
}

/** The plan that lands at a colour. */
export const find = (wish: Wish): Promise<Found> => worker.find(wish);

/** A plan's central course, to lay behind the one on the Desk. */
export const lay = (request: PlanRequest, kit: Kit): Promise<Outcome> => worker.lay(request, kit);

async function answerAll(): Promise<void> {
  busy = true;
  while (waiting) {
    const asked = waiting;
    waiting = undefined;
    const outcome = await worker.plan(asked);
    if (asked.turn === turn) listener?.planned(outcome, asked.turn);
  }
  busy = false;
}
