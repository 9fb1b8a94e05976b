/** A cook of the demo: its log as a phone would have noted it, and what its pan truly held at the end. */
import { randomBytes, randomUUID } from 'node:crypto';
import { type Noting, simulatedLog } from '../../core/book/simulatedLog.ts';
import type { Begun } from '../../core/log/bodies.ts';
import type { KnownEvent } from '../../core/log/event.ts';
import { makeEvent } from '../../core/log/makeEvent.ts';
import { type Poured, pouredOf } from '../../core/lot/yield.ts';
import type { Course } from '../../core/pan/course.ts';
import { drawnValues } from '../../core/pan/model.ts';
import type { ModelValues } from '../../core/pan/physics.ts';
import { prepareKit } from '../../core/pan/preparedKit.ts';
import { simulate } from '../../core/pan/simulate.ts';
import { normalNumbers } from '../../core/reactions/normal.ts';
import type { Seen } from '../../core/twin/observe.ts';
import { cooks, dayMs, demoId, kits, plans } from './club.ts';

/** Cooks that could have been as planned: what the lot is said to be on the day that it is made. */
const draws = 16;

export interface DemoCooked {
  /** Number of the plan that it went by. */
  readonly plan: number;
  readonly begun: Begun;
  readonly events: readonly KnownEvent[];
  readonly pouredMs: number;
  readonly believed: Poured;
  readonly truth: Poured;
}

/** @param nowMs the day that the club's days are counted back from */
export function simulatedCook(number: number, nowMs: number): DemoCooked {
  const { plan: planNumber, mode, seed, daysAgo, note } = cooks[number];
  const { kit: kitNumber, request } = plans[planNumber];
  const kit = kits[kitNumber];
  const startMs = nowMs - daysAgo * dayMs;
  const make = phoneOf(demoId('cook', number), startMs);
  const events: KnownEvent[] = [];
  const noting: Noting = (kind, body, atS) => {
    // In its turn: a device counts what it notes.
    if (note && atS >= note.atS && !events.some((event) => event.kind === 'note')) {
      events.push(make('note', { text: note.text }, note.atS));
    }
    const event = make(kind, body, atS);
    events.push(event as KnownEvent);
    return event;
  };
  const cooking = { request, kit, mode, planId: demoId('plan', planNumber), seed };
  const { begun, values, course, lastS } = simulatedLog(cooking, noting);
  noting('ended', { how: 'done' }, lastS + 60);
  const { charge } = begun.amounts;
  const recipe = { charge, steps: begun.steps };
  const prepared = prepareKit(kit);
  const normal = normalNumbers(seed + 1);
  const believed = Array.from({ length: draws }, () => {
    const drawn = drawnValues(kit, normal);
    return seenAtTheEnd(simulate(recipe, prepared, drawn, { normal }), drawn);
  });
  return {
    plan: planNumber,
    begun,
    events,
    pouredMs: startMs + 1000 * lastS,
    believed: pouredOf(believed, charge, kit.roomC),
    truth: pouredOf([seenAtTheEnd(course, values)], charge, kit.roomC),
  };
}

/** A phone whose clock is right. */
function phoneOf(cook: string, startMs: number): Noting {
  const device = randomUUID();
  let deviceSeq = 0;
  return (kind, body, atS) => {
    const tMono = Math.round(1000 * atS);
    deviceSeq += 1;
    const when = { wallMs: startMs + tMono, tMono, clockOffsetMs: 0, clockErrMs: 0, tz: 'UTC' };
    return makeEvent({ cook, device, bootId: device, deviceSeq, ...when, random: randomBytes(10) }, kind, body);
  };
}

function seenAtTheEnd({ last, temperatureC, ph }: Course, values: ModelValues): Seen {
  return { y: last, values, ph: ph.at(-1) ?? Number.NaN, temperatureC: temperatureC.at(-1) ?? Number.NaN };
}
