/** The log of a whole simulated cook: what a thermometer and a person would have noted of a pan that hides its true numbers. */
import type { Begun, EventBodies, EventKind } from '../log/bodies.ts';
import { deedBody } from '../log/deedBody.ts';
import type { EventOf, KnownEvent } from '../log/event.ts';
import type { Course } from '../pan/course.ts';
import type { Kit } from '../pan/kit.ts';
import { drawnValues } from '../pan/model.ts';
import type { ModelValues } from '../pan/physics.ts';
import { prepareKit } from '../pan/preparedKit.ts';
import { simulate } from '../pan/simulate.ts';
import { begunOf } from '../planning/begunOf.ts';
import { planFor } from '../planning/plan.ts';
import type { PlanRequest } from '../planning/request.ts';
import { normalNumbers } from '../reactions/normal.ts';

const readingEveryS = 10;
/** Of the thermometer, C (1 sd). */
const noiseC = 0.4;
/** What is hidden is drawn so many times wider than its stated spread. */
const wider = 1.25;

export interface SimulatedCook {
  readonly request: PlanRequest;
  readonly kit: Kit;
  readonly mode: Begun['mode'];
  readonly planId: string | null;
  /** Of all that is hidden. */
  readonly seed: number;
  /** What is weighed in otherwise than planned. */
  readonly waterTimes?: number;
  /** Of the thermometer and the spoons; otherwise they follow from `seed`. */
  readonly noiseSeed?: number;
}

/** A device that notes: an event of one cook, so many seconds after its start. */
export type Noting = <K extends EventKind>(kind: K, body: EventBodies[K], atS: number) => EventOf<K>;

export interface SimulatedLog {
  readonly events: readonly KnownEvent[];
  readonly begun: Begun;
  /** What was hidden, and how the pan went by it. */
  readonly values: ModelValues;
  readonly course: Course;
  readonly lastS: number;
}

/** @throws Error when the request is one that no plan is made for */
export function simulatedLog(cooking: SimulatedCook, note: Noting): SimulatedLog {
  const { request, kit, mode, planId, seed, waterTimes = 1, noiseSeed } = cooking;
  const prepared = prepareKit(kit);
  const planned = planFor(request, prepared);
  if (planned.kind === 'refused') throw new Error(planned.refusals[0].message);
  const { amounts } = planned.plan;
  const charge = { ...amounts.charge, waterKg: amounts.charge.waterKg * waterTimes };
  const plan = { ...planned.plan, amounts: { ...amounts, charge } };
  const hidden = normalNumbers(seed);
  const values = drawnValues(kit, () => wider * hidden());
  const normal = noiseSeed === undefined ? hidden : normalNumbers(noiseSeed);
  const course = simulate({ charge, steps: plan.steps }, prepared, values, { normal });
  const rehearsal = mode === 'rehearsal' ? { seed, speed: 1 } : null;
  const begun = begunOf(plan, kit, { mode, rehearsal, planId });
  const events: EventOf<keyof EventBodies>[] = [note('begun', begun, 0)];
  let parts = 0;
  const due = [...course.deeds];
  for (let t = readingEveryS; t < course.timeS.length; t += readingEveryS) {
    for (; due.length > 0 && due[0].timeS <= t; due.shift()) {
      const [{ timeS, deed }] = due;
      const noted =
        deed.kind === 'water' && deed.spoonfuls > 0 ? { ...deed, waterKg: deed.spoonfuls * kit.spoonM3 * 1000 } : deed;
      const { kind, body } = deedBody(noted, parts);
      if (deed.kind === 'alkali') parts++;
      events.push(note(kind, body, timeS));
    }
    const valueC = course.readingC[t] + noiseC * normal();
    events.push(note('reading', { probe: 'pan', valueC, quality: 'fresh', unit: 'Cel', raw: valueC }, t));
  }
  const lastS = course.timeS.length - 1;
  if (!events.some(({ kind }) => kind === 'poured')) events.push(note('poured', {}, lastS));
  return { events: events as KnownEvent[], begun, values, course, lastS };
}
