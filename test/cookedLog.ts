// The log of a whole simulated cook on a hidden kitchen: what a thermometer and a person would have noted of it.
import type { Begun, EventBodies } from '../src/core/log/bodies.ts';
import { deedBody } from '../src/core/log/deedBody.ts';
import type { EventOf, KnownEvent } from '../src/core/log/event.ts';
import type { Kit } from '../src/core/pan/kit.ts';
import { drawnValues } from '../src/core/pan/model.ts';
import type { ModelValues } from '../src/core/pan/physics.ts';
import { prepareKit } from '../src/core/pan/preparedKit.ts';
import { simulate } from '../src/core/pan/simulate.ts';
import { begunOf } from '../src/core/planning/begunOf.ts';
import { planFor } from '../src/core/planning/plan.ts';
import { defaultRequest, type PlanRequest } from '../src/core/planning/request.ts';
import { normalNumbers } from '../src/core/reactions/normal.ts';
import { sampleDevice } from './sampleCook.ts';

export interface CookedLog {
  readonly events: readonly KnownEvent[];
  readonly begun: Begun;
  /** What was hidden. */
  readonly values: ModelValues;
  readonly lastS: number;
}

interface Cooking {
  readonly request?: PlanRequest;
  /** What is weighed in otherwise than planned. */
  readonly waterTimes?: number;
  /** Of the thermometer and the spoons; otherwise they follow from the seed of what is hidden. */
  readonly noiseSeed?: number;
}

/** Readings each 10 s with 0.4 C of noise; the same kit and seed give the same cook under another id. */
export function cookedLog(
  kit: Kit,
  seed: number,
  mode: Begun['mode'] = 'live',
  cook = `cook-${seed}`,
  { request = defaultRequest, waterTimes = 1, noiseSeed }: Cooking = {},
): CookedLog {
  const prepared = prepareKit(kit);
  const planned = planFor(request, prepared);
  if (planned.kind === 'refused') throw new Error(planned.refusals[0].message);
  const { amounts } = planned.plan;
  const charge = { ...amounts.charge, waterKg: amounts.charge.waterKg * waterTimes };
  const plan = { ...planned.plan, amounts: { ...amounts, charge } };
  const hidden = normalNumbers(seed);
  const values = drawnValues(kit, () => 1.25 * hidden());
  const normal = noiseSeed === undefined ? hidden : normalNumbers(noiseSeed);
  const recipe = { charge: plan.amounts.charge, steps: plan.steps };
  const course = simulate(recipe, prepared, values, { normal });
  const rehearsal = mode === 'rehearsal' ? { seed, speed: 1 } : null;
  const begun = begunOf(plan, kit, { mode, rehearsal, planId: null });
  const device = sampleDevice(cook);
  const events: EventOf<keyof EventBodies>[] = [device.make('begun', begun, 0)];
  let parts = 0;
  const due = [...course.deeds];
  for (let t = 10; t < course.timeS.length; t += 10) {
    for (; due.length > 0 && due[0].timeS <= t; due.shift()) {
      const [{ timeS, deed }] = due;
      const noted =
        deed.kind === 'water' && deed.spoonfuls > 0 ? { ...deed, waterKg: deed.spoonfuls * kit.spoonM3 * 1000 } : deed;
      const { kind, body } = deedBody(noted, parts);
      if (deed.kind === 'alkali') parts++;
      events.push(device.make(kind, body, timeS));
    }
    const valueC = course.readingC[t] + 0.4 * normal();
    events.push(device.make('reading', { probe: 'pan', valueC, quality: 'fresh', unit: 'Cel', raw: valueC }, t));
  }
  const lastS = course.timeS.length - 1;
  if (!events.some(({ kind }) => kind === 'poured')) events.push(device.make('poured', {}, lastS));
  return { events: events as KnownEvent[], begun, values, lastS };
}
