/** A simulated cook as a JSON document. */
import { ebcFromA430 } from '../../core/colour/scales.ts';
import type { Range } from '../../core/twin/range.ts';
import { courseRows } from './courseRows.ts';
import type { Rehearsed } from './rehearse.ts';

function scaled({ low, mid, high }: Range, change: (value: number) => number): Range {
  return { low: change(low), mid: change(mid), high: change(high) };
}

export function simulationDocument(rehearsed: Rehearsed) {
  const { plan, kit, forecast, drops, run, course } = rehearsed;
  return {
    format: 'umberpan-simulation-1',
    request: plan.request,
    kit,
    draws: run.draws,
    seed: run.seed,
    ending: course.ending,
    hottest_Cel: course.hottestC,
    yield_kg: forecast.yieldKg,
    steps: forecast.steps.map((step, at) => ({
      kind: step.kind,
      takes_min: step.minutes,
      ends_min: step.endMinute,
      reading_Cel: step.readingC,
      spoonfuls: step.spoonfuls,
      'water_%': scaled(step.waterShare, (share) => 100 * share),
      'ph_[pH]': step.ph,
      'inverted_%': scaled(step.inverted, (share) => 100 * share),
      'colour_{EBC}': scaled(step.a430, ebcFromA430),
      drop_srgb: drops[at] && [drops[at].r, drops[at].g, drops[at].b],
    })),
    course: courseRows(rehearsed),
  };
}
