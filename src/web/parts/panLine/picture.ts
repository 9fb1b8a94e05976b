/** What the Desk draws of a planned cook: columns thinned to what a screen can show, and the colours of the ribbon. */
import { courseColour } from '../../../core/colour/courseColour.ts';
import type { Course, Ending, StepSpan } from '../../../core/pan/course.ts';
import { centralValues } from '../../../core/pan/model.ts';
import type { PreparedKit } from '../../../core/pan/preparedKit.ts';
import type { TimedDeed } from '../../../core/pan/steps.ts';
import { describe, type Forecast, type StepEnd, type Traces, traceNames } from '../../../core/planning/forecast.ts';
import type { Plan } from '../../../core/planning/plan.ts';
import { filmDepthCm, likelyHueIndex, poolColour, type Tone } from '../syrupPaint.ts';

/** Distance of the rows that are drawn, s, and of the colours along the ribbon. */
export const drawnEveryS = 5;
const paintEveryS = 30;

export interface Paint {
  readonly atS: number;
  readonly colour: string;
}

export interface Picture {
  readonly plan: Plan;
  readonly traces: Traces;
  readonly steps: readonly StepSpan[];
  readonly ends: readonly StepEnd[];
  readonly deeds: readonly TimedDeed[];
  readonly endS: number;
  readonly ending: Ending;
  readonly hottestC: number;
  /** Syrup at the end of each step. */
  readonly tones: readonly Tone[];
  readonly ribbon: readonly Paint[];
}

/** What a pan line draws of a plan; a cook that has begun carries the same. */
export interface PlanDrawn {
  readonly steps: Plan['steps'];
  readonly amounts: { readonly alkali?: object | null | undefined };
}

/** Colours at the pale and at the dark end of the band of colour. */
export interface RibbonEdges {
  readonly pale: readonly Paint[];
  readonly dark: readonly Paint[];
}

export interface Bands {
  readonly forecast: Forecast;
  readonly edges: RibbonEdges;
}

export function pictureOf(plan: Plan, course: Course, prepared: PreparedKit): Picture {
  const values = centralValues(prepared.kit);
  const { traces, ends } = describe(course, values, 1);
  const { hueIndex } = courseColour(course, values.absorptivity420);
  const toneAt = (row: number): Tone => ({
    a430: traces.a430[row] ?? 0,
    hueIndex: hueIndex[row] ?? likelyHueIndex(0),
    waterShare: traces.waterShare[row] ?? 0,
  });
  const lastRow = course.timeS.length - 1;
  const ribbon: Paint[] = [];
  for (let row = 0; row <= lastRow; row += paintEveryS) {
    ribbon.push({ atS: row, colour: poolColour(toneAt(row), filmDepthCm) });
  }
  return {
    plan,
    traces: Object.fromEntries(traceNames.map((name) => [name, thinned(traces[name])])) as Traces,
    steps: course.steps,
    ends,
    deeds: course.deeds,
    endS: course.steps.at(-1)?.endS ?? lastRow,
    ending: course.ending,
    hottestC: course.hottestC,
    tones: course.steps.map(({ endS }) => toneAt(Math.min(lastRow, Math.floor(endS)))),
    ribbon,
  };
}

function thinned(column: Float64Array): Float64Array {
  const rows = Math.floor((column.length - 1) / drawnEveryS) + 1;
  return Float64Array.from({ length: rows }, (_, i) => column[i * drawnEveryS] ?? 0);
}

/** Colours of the band's two ends, taken at the water that the middle course has. */
export function ribbonEdges(picture: Picture, { bands }: Forecast, bandEveryS: number): RibbonEdges {
  const water = picture.traces.waterShare;
  const edge = (a430s: Float64Array): Paint[] =>
    picture.ribbon.map(({ atS }) => {
      const a430 = a430s[Math.min(a430s.length - 1, Math.round(atS / bandEveryS))] ?? 0;
      const waterShare = water[Math.min(water.length - 1, Math.round(atS / drawnEveryS))] ?? 0;
      return { atS, colour: poolColour({ a430, hueIndex: likelyHueIndex(a430), waterShare }, filmDepthCm) };
    });
  return { pale: edge(bands.a430.low), dark: edge(bands.a430.high) };
}
