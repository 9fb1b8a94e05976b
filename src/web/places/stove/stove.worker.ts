/** A cook beside the page: rehearsed on a hidden pan by a clock of its own, or real and followed by its log. */
import { expose } from 'comlink';
import type { DeviceSigns } from '../../../core/advice/alarms/signs.ts';
import type { Refusal } from '../../../core/advice/limits.ts';
import { createLiveCook, type LiveCook } from '../../../core/advice/liveCook.ts';
import { createRehearsal, type Rehearsal, readEveryS } from '../../../core/advice/rehearsal.ts';
import type { Begun, EventBodies, EventKind } from '../../../core/log/bodies.ts';
import type { KnownEvent, LogEvent, Stamp } from '../../../core/log/event.ts';
import type { Kit } from '../../../core/pan/kit.ts';
import { prepareKit } from '../../../core/pan/preparedKit.ts';
import type { Deed } from '../../../core/pan/steps.ts';
import { begunOf } from '../../../core/planning/begunOf.ts';
import { planFor } from '../../../core/planning/plan.ts';
import type { PlanRequest } from '../../../core/planning/request.ts';
import { type Planned, plannedOf } from './planned.ts';
import { createClock } from './rehearsal/clock.ts';
import { type Revealing, revealingOf } from './rehearsal/revealing.ts';
import { createSitting, type Sitting } from './sitting.ts';
import type { Told } from './view.ts';

/** Members of the twin: half of the core's usual number, so that a small machine keeps up. */
const members = 128;

export interface ToRehearse {
  readonly turn: number;
  readonly request: PlanRequest;
  readonly kit: Kit;
  readonly seed: number;
  readonly surprises: boolean;
}

export type Opened =
  | { readonly kind: 'ready'; readonly planned: Planned }
  | { readonly kind: 'refused'; readonly refusals: readonly Refusal[] }
  | { readonly kind: 'failed'; readonly message: string };

interface Open {
  readonly turn: number;
  readonly cook: LiveCook;
  readonly sitting: Sitting;
  readonly rehearsal: Rehearsal | undefined;
}

let tell: (told: Told) => void = () => {};
let open: Open | undefined;
let reveal: Revealing | undefined;

/** Of a real cook: all that was heard of it, by id, and what its clock shows. */
let heard = new Map<string, LogEvent & Partial<Stamp>>();
let nowMs = 0;
let movedToS = -1;

const clock = createClock({
  slow: () => open?.sitting.asksForAct() ?? false,
  over: () => open?.rehearsal?.progress.poured ?? true,
  moveTo(timeS) {
    if (!open?.rehearsal) return;
    const before = Math.floor(open.rehearsal.timeS / readEveryS);
    open.rehearsal.moveTo(timeS);
    if (Math.floor(timeS / readEveryS) > before) open.sitting.look();
    show();
  },
  timeS: () => open?.rehearsal?.timeS ?? 0,
});

function timeS(): number {
  if (!open) return 0;
  const { rehearsal, cook } = open;
  return rehearsal ? rehearsal.timeS : Math.max(0, (nowMs - (cook.state.startMs ?? nowMs)) / 1000);
}

function show(): void {
  if (!open) return;
  const pace = open.rehearsal && clock.pace();
  tell({ ...open.sitting.told(open.turn, timeS()), pace, reveal });
}

function opened(work: () => Opened): Opened {
  clock.run(false);
  open = undefined;
  reveal = undefined;
  try {
    return work();
  } catch (error) {
    return { kind: 'failed', message: error instanceof Error ? error.message : String(error) };
  }
}

const stove = {
  onTold(listener: (told: Told) => void): void {
    tell = listener;
  },

  rehearse({ turn, request, kit, seed, surprises }: ToRehearse): Opened {
    return opened(() => {
      const prepared = prepareKit(kit);
      const outcome = planFor(request, prepared);
      if (outcome.kind === 'refused') return outcome;
      const how = { seed, speed: 1, ...(surprises ? { surprises } : {}) };
      const begun = begunOf(outcome.plan, kit, { mode: 'rehearsal', rehearsal: how, planId: null });
      const rehearsal = createRehearsal({ prepared, begun, members });
      open = { turn, cook: rehearsal.cook, sitting: createSitting(rehearsal.cook), rehearsal };
      show();
      return { kind: 'ready', planned: plannedOf(begun, prepared, members) };
    });
  },

  /** Follows a real cook by what is heard of it. */
  follow(turn: number, begun: Begun): Opened {
    return opened(() => {
      const { kit, steps, amounts } = begun;
      const prepared = prepareKit(kit);
      const cook = createLiveCook({ prepared, charge: amounts.charge, steps, members });
      heard = new Map();
      movedToS = -1;
      open = { turn, cook, sitting: createSitting(cook), rehearsal: undefined };
      return { kind: 'ready', planned: plannedOf(begun, prepared, members) };
    });
  },

  /** @param atMs the true time, ms since 1970 */
  hear(events: readonly (LogEvent & Partial<Stamp>)[], atMs: number, device: DeviceSigns): void {
    if (!open || open.rehearsal) return;
    const { cook, sitting } = open;
    nowMs = Math.max(nowMs, atMs);
    for (const event of events) heard.set(event.id, event);
    if (events.length > 0) cook.hear([...heard.values()]);
    cook.moveTo(timeS(), device);
    const { timeS: twinS } = cook.followed.twin;
    if (events.length > 0 || twinS !== movedToS) sitting.look();
    movedToS = twinS;
    show();
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

  /** Does deeds of a rehearsal now, those of them that are open; the first one starts the clock. */
  perform(deeds: readonly Deed[]): void {
    const { rehearsal, sitting } = open ?? {};
    if (!rehearsal || !sitting || rehearsal.progress.poured) return;
    const first = rehearsal.deeds.length === 0;
    for (const deed of deeds.filter(sitting.isOpen)) rehearsal.perform(deed);
    if (rehearsal.progress.poured) reveal = revealingOf(rehearsal);
    sitting.look();
    if (first && rehearsal.deeds.length > 0) clock.run(true);
    clock.wake();
    show();
  },
  /** What the cook of a rehearsal says beside its deeds. */
  say<K extends EventKind>(kind: K, body: EventBodies[K]): void {
    const { rehearsal, sitting } = open ?? {};
    if (!rehearsal || !sitting || rehearsal.progress.poured) return;
    rehearsal.say(kind, body);
    rehearsal.cook.moveTo(rehearsal.timeS);
    sitting.look();
    show();
  },
  /** The log of the rehearsal so far. */
  log(): readonly KnownEvent[] {
    return open?.rehearsal?.events ?? [];
  },
  putAside(): void {
    open?.sitting.putAside();
    clock.wake();
    show();
  },
};

export type Stove = typeof stove;

expose(stove);
