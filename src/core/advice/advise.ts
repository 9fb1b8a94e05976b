/** One piece of advice at a time: what to do next, why, what it will do, and how long there is. */

import type { Kit } from '../pan/kit.ts';
import { stalledCPerS } from '../pan/person.ts';
import { dissolvedKg, place } from '../pan/state.ts';
import type { Deed, Step } from '../pan/steps.ts';
import { type Range, rangeOf } from '../twin/range.ts';
import type { Twin } from '../twin/twin.ts';
import { alkaliPart, type Candidate, letDownPortion, type Situation, steering, tellsAfterS } from './candidates.ts';
import { limits } from './limits.ts';
import { costOf, type Horizon, type Outlook, outlook, shareEverAbove, shareEverOutside, upTo } from './outlook.ts';
import { isApproaching, isBegun, isOver, type Progress } from './progress.ts';

/** `next` is the ordinary next thing of a cook that goes to plan: who is late with it loses only time. */
export type Urgency = 'act now' | 'act soon' | 'next' | 'go on';

export interface Advice {
  readonly kind:
    | 'steer'
    | 'wait'
    | 'alkali'
    | 'cool first'
    | 'next step'
    | 'pour'
    | 'off the heat'
    | 'foam'
    | 'blind'
    | 'read';
  readonly deeds: readonly Deed[];
  readonly urgency: Urgency;
  /** Temperature expected at the end of the outlook, and chance of leaving the band within a minute if nothing is done. */
  readonly expectedC: Range;
  readonly leavesBand: number;
  /** Equivalent minutes of the hold still to go. */
  readonly minutesLeft: number | undefined;
}

export interface Cooking {
  readonly twin: Twin;
  readonly kit: Kit;
  readonly steps: readonly Step[];
  readonly progress: Progress;
}

/** A person needs about 25 s from a card on the screen to the act (assumed; ALM-5). */
export const usualHorizon: Horizon = { reactionS: 25, everyS: 15, rows: 12, members: 32 };

/** A turn of the dial is given the time that it takes to tell before the next, but no longer than this, s. */
const restAtMostS = 90;

/** Who reads the thermometer is asked to this often, s (FLT-2). */
export const readByHandEveryS = 120;

/** Advice to act must better going on by this much, K min: no fidgeting. */
const worthwhile = 0.4;

/**
 * A hold is steered to stay this far above the lower edge of its band, K: between two settings of a coarse dial a pan swings, and
 * without it would swing about the edge. Chosen by measured time in the band (bench/results/advice.md).
 */
const clearOfEdgeK = 1;

export function situationOf({ twin, kit, steps, progress }: Cooking): Situation {
  const temperature = rangeOf(twin.members.map((m) => m.temperatureC));
  const dry = rangeOf(twin.members.map((m) => dissolvedKg(m.y))).mid;
  const water = rangeOf(twin.members.map((m) => m.y[place.waterKg])).mid;
  return {
    timeS: twin.timeS,
    kit,
    steps,
    progress,
    notch: twin.notch,
    temperatureC: temperature.mid,
    highC: temperature.high,
    syrupKg: dry + water,
    solids: dry / (dry + water),
  };
}

/**
 * Chooses by forecasting each deed that `candidates.ts` allows.
 *
 * @param furthest how far and how finely to look at most
 */
export function advise(cooking: Cooking, furthest: Horizon = usualHorizon): Advice {
  const { twin, kit, steps, progress } = cooking;
  const horizon = horizonIn(kit, furthest);
  const now = situationOf(cooking);
  const step = steps[progress.stepIndex];
  const idle = outlook(twin, kit, [], horizon);
  const base = { leavesBand: shareEverOutside(upTo(idle, 60), step.bandC), minutesLeft: minutesLeft(progress, step) };
  const approaching = isApproaching(progress, step);
  const say = (kind: Advice['kind'], deeds: readonly Deed[], urgency: Urgency, view: Outlook): Advice => ({
    kind,
    deeds,
    urgency,
    expectedC: rangeOf(view.temperatureC[view.temperatureC.length - 1]),
    ...base,
  });

  // The pan is filled and cold: the first thing to do is what the plan begins with.
  if (!isBegun(progress) && now.notch === 0)
    return say('steer', [{ kind: 'heat', notch: step.approachNotch }], 'next', idle);
  if (shareEverAbove(upTo(idle, 90), limits.roastTemperature.value) > 0.5) {
    return say('off the heat', now.notch > 0 ? [{ kind: 'heat', notch: 0 }] : [], 'act now', idle);
  }
  if (isOver(progress, step, now.temperatureC, now.solids)) {
    const last = progress.stepIndex === steps.length - 1;
    const deed: Deed = last ? { kind: 'pour' } : { kind: 'step', index: progress.stepIndex + 1 };
    return last ? say('pour', [deed], 'act soon', idle) : say('next step', [deed], 'next', idle);
  }
  if (progress.partsGiven < step.alkali.length) return alkaliAdvice(now, idle, say);
  if (step.letDown) return letDownAdvice(now, idle, say);

  const band = wantedBand(steps, progress.stepIndex, approaching);
  const idleCost = costOf(idle, band, approaching);
  const onTheWay = approaching && now.temperatureC < step.bandC[0];
  // What a slow ring gains shows beyond the outlook: to get nowhere is worth any turn that betters it.
  const stalls = onTheWay && getsNowhere(idle, step.bandC[0]);
  const least = stalls ? 0 : worthwhile;
  if (idleCost < least) return say('wait', [], 'go on', idle);
  let best: { candidate: Candidate; view: Outlook; cost: number } | undefined;
  const urgent = base.leavesBand > 0.5 && !onTheWay;
  const justTurned = now.timeS - progress.turnedS < Math.min(restAtMostS, tellsAfterS(kit));
  /** Turned up again at once only if it is urgent; down also when the band is about to be left upwards on the way. */
  const fidgets = ({ deeds }: Candidate): boolean =>
    justTurned &&
    deeds.some((deed) => deed.kind === 'heat' && (deed.notch > now.notch ? !urgent : base.leavesBand < 0.5));
  for (const candidate of steering(now, approaching)) {
    if (fidgets(candidate)) continue;
    const view = outlook(twin, kit, candidate.deeds, horizon);
    const cost = costOf(view, band, approaching) + (stalls ? 0 : candidate.trouble);
    if (!best || cost < best.cost) best = { candidate, view, cost };
  }
  if (!best || idleCost - best.cost < least) return say('wait', [], 'go on', idle);
  const late = onTheWay && !best.candidate.deeds.some((deed) => deed.kind === 'heat' && deed.notch < now.notch);
  return say('steer', best.candidate.deeds, urgent ? 'act now' : late ? 'next' : 'act soon', best.view);
}

/** What an alarm makes of advice: the two must never say different things. */
export interface Troubles {
  /** Foam rises, and nobody has said yet that it is quiet. */
  readonly foam: boolean;
  /** No reading can be believed. */
  readonly blind: boolean;
  /** How long ago a number last came from a thermometer, or the cook began, s. */
  readonly unreadS: number;
}

export function adviseIn(troubles: Troubles, cooking: Cooking, furthest: Horizon = usualHorizon): Advice {
  const { notch } = cooking.twin;
  const off: readonly Deed[] = notch > 0 ? [{ kind: 'heat', notch: 0 }] : [];
  const advice = advise(cooking, furthest);
  if (troubles.foam && advice.kind !== 'off the heat')
    return { ...advice, kind: 'foam', deeds: off, urgency: 'act now' };
  const hotter = advice.deeds.some((deed) => deed.kind === 'heat' && deed.notch > notch);
  const toldWhatToDo = advice.deeds.length > 0 && !(troubles.blind && hotter);
  if (troubles.unreadS >= readByHandEveryS && isBegun(cooking.progress) && !toldWhatToDo)
    return { ...advice, kind: 'read', deeds: [], urgency: 'next' };
  if (troubles.blind && hotter) return { ...advice, kind: 'blind', deeds: [], urgency: 'go on' };
  return advice;
}

/**
 * No further than a deed can't be taken back: on a quick ring the next advice comes in time for what lies beyond, and fearing it now
 * would keep a small batch from ever getting hot.
 */
function horizonIn(kit: Kit, furthest: Horizon): Horizon {
  const seconds = furthest.reactionS + tellsAfterS(kit);
  return { ...furthest, rows: Math.min(furthest.rows, Math.ceil(seconds / furthest.everyS)) };
}

function getsNowhere({ temperatureC, everyS }: Outlook, lowC: number): boolean {
  const [first, last] = [temperatureC[0], temperatureC[temperatureC.length - 1]].map((row) => rangeOf(row).mid);
  return last < lowC && last - first < stalledCPerS * everyS * (temperatureC.length - 1);
}

/** On the way: from where the step ends to the top of the next hold, or the band it leads to; in a hold: its band, clear of the lower edge. */
function wantedBand(steps: readonly Step[], index: number, approaching: boolean): readonly [number, number] {
  const step = steps[index];
  if (!('reachedC' in step.end)) return [step.bandC[0] + (approaching ? 0 : clearOfEdgeK), step.bandC[1]];
  const hold = steps.slice(index).find(({ end }) => 'heldMinutes' in end);
  return [step.end.reachedC, hold ? hold.bandC[1] : step.end.reachedC + 4];
}

type Say = (kind: Advice['kind'], deeds: readonly Deed[], urgency: Urgency, view: Outlook) => Advice;

/** Off the heat first, then part after part, each when it may go in. */
function alkaliAdvice(now: Situation, idle: Outlook, say: Say): Advice {
  if (now.notch > 0) return say('cool first', [{ kind: 'heat', notch: 0 }], 'act soon', idle);
  const part = alkaliPart(now);
  if (part) return say('alkali', part.deeds, 'next', idle);
  return say('wait', [], 'go on', idle);
}

/** Ring off, then water in portions that suit the temperature. */
function letDownAdvice(now: Situation, idle: Outlook, say: Say): Advice {
  if (now.notch > 0) return say('cool first', [{ kind: 'heat', notch: 0 }], 'next', idle);
  const portion = letDownPortion(now);
  return portion ? say('steer', portion.deeds, 'next', idle) : say('wait', [], 'go on', idle);
}

function minutesLeft(progress: Progress, step: Step): number | undefined {
  return 'heldMinutes' in step.end ? Math.max(0, step.end.heldMinutes - progress.heldMinutes) : undefined;
}
