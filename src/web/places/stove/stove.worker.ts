/** A rehearsal beside the page: a hidden pan, its twin and the advice, moved on by a clock that can be slowed, hastened and held. */
import { expose } from 'comlink';
import type { Refusal } from '../../../core/advice/limits.ts';
import { createRehearsal } from '../../../core/advice/rehearsal.ts';
import type { Kit } from '../../../core/pan/kit.ts';
import { centralValues } from '../../../core/pan/model.ts';
import { prepareKit } from '../../../core/pan/preparedKit.ts';
import type { Deed } from '../../../core/pan/steps.ts';
import { tracesOf } from '../../../core/planning/forecast.ts';
import { type Plan, planFor } from '../../../core/planning/plan.ts';
import type { PlanRequest } from '../../../core/planning/request.ts';
import { createClock } from './clock.ts';
import { createLiveRehearsal, type LiveRehearsal } from './liveRehearsal.ts';
import type { Told } from './view.ts';

/** Members of the twin: half of the core's usual number, so that the clock can go at 60 on a small machine. */
const members = 128;

export interface Asked {
  readonly turn: number;
  readonly request: PlanRequest;
  readonly kit: Kit;
  readonly seed: number;
}

/** What the page draws under the cook: the plan and its expected course. */
export interface Planned {
  readonly plan: Plan;
  readonly kit: Kit;
  readonly seed: number;
  readonly members: number;
  readonly endS: number;
  readonly hottestC: number;
  /** What the thermometer should show, a row each second. */
  readonly courseC: Float64Array;
}

export type Begun =
  | { readonly kind: 'ready'; readonly planned: Planned }
  | { readonly kind: 'refused'; readonly refusals: readonly Refusal[] }
  | { readonly kind: 'failed'; readonly message: string };

let tell: (told: Told) => void = () => {};
let live: LiveRehearsal | undefined;
let turn = 0;

const clock = createClock({
  slow: () => live?.asksForAct() ?? false,
  over: () => !live || live.poured(),
  moveTo(timeS) {
    live?.moveTo(timeS);
    show();
  },
  timeS: () => live?.timeS() ?? 0,
});

function show(): void {
  if (live) tell(live.told(turn, clock.pace()));
}

function begin({ request, kit, seed, turn: asked }: Asked): Begun {
  clock.run(false);
  live = undefined;
  turn = asked;
  try {
    const prepared = prepareKit(kit);
    const outcome = planFor(request, prepared);
    if (outcome.kind === 'refused') return outcome;
    const { plan, course } = outcome;
    const { steps } = plan;
    const { charge } = plan.amounts;
    const rehearsal = createRehearsal({ prepared, charge, steps, seed, members });
    live = createLiveRehearsal({ rehearsal, kit, steps, charge });
    show();
    const courseC = tracesOf(course, centralValues(kit)).readingC;
    const endS = course.steps.at(-1)?.endS ?? 0;
    return {
      kind: 'ready',
      planned: { plan, kit, seed, members, endS, hottestC: course.hottestC, courseC },
    };
  } catch (error) {
    return { kind: 'failed', message: error instanceof Error ? error.message : String(error) };
  }
}

const stove = {
  begin,
  onTold(listener: (told: Told) => void): void {
    tell = listener;
  },
  run(running: boolean): void {
    clock.run(running);
    show();
  },
  setSpeed(speed: number): void {
    clock.setSpeed(speed);
    show();
  },
  setSlowsForActs(slows: boolean): void {
    clock.setSlowsForActs(slows);
    show();
  },
  /** Does deeds now, those of them that are open; the first one starts the clock. */
  perform(deeds: readonly Deed[]): void {
    if (!live || live.poured()) return;
    const first = !live.begun();
    live.perform(deeds);
    if (first) clock.run(true);
    clock.wake();
    show();
  },
  putAside(): void {
    live?.putAside();
    clock.wake();
    show();
  },
};

export type Stove = typeof stove;

expose(stove);
