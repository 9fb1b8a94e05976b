/** The pan line of a plan in black and white, flat enough for a sheet: the middle cook, where 8 in 10 cooks run, steps and deeds; the sugar hatched. */
import { area } from 'd3-shape';
import { hatchingGap } from '../../colour/hatching.ts';
import { ebcFromA430 } from '../../colour/scales.ts';
import type { Course } from '../../pan/course.ts';
import type { ModelValues } from '../../pan/physics.ts';
import { describe, drawEveryS, type Forecast, type StepEnd } from '../../planning/forecast.ts';
import { endOf, reading, steps } from './courseLine.ts';
import { at, axes, type Frame, frameFor, railsOf, ribbonDepth, short } from './panFrame.ts';
import { score } from './score.ts';

const size = { width: 720, left: 54, right: 700, top: 22, bottom: 138, height: 194, letter: 7.6 };
/** A step narrower than this has no room for its colour's unit, or for its colour at all. */
const unitRoom = 62;
const numberRoom = 26;

export function planLineSvg(course: Course, values: ModelValues, forecast: Forecast): string {
  const { traces, ends } = describe(course, values, 1);
  const frame = frameFor(endOf(course), course.hottestC, size);
  const rails = railsOf(size);
  return [
    `<svg viewBox="0 0 ${size.width} ${size.height}" role="img" aria-label="Pan line">`,
    axes(frame),
    hatched(course, ends, traces.readingC, frame),
    band(forecast, frame),
    steps(course, frame),
    reading(traces, frame, 'middle'),
    `<text x="0" y="${rails.dial}">dial</text><text x="0" y="${rails.given + 4}">given</text>`,
    score(course.deeds, frame),
    '</svg>',
  ].join('\n');
}

/** Each step as dark as it ends. */
function hatched({ steps: spans }: Course, ends: readonly StepEnd[], readingC: Float64Array, frame: Frame): string {
  const { x, y } = frame;
  return spans
    .map(({ startS, endS }, i) => {
      const a430 = ends[i].a430;
      const gap = hatchingGap(a430);
      if (gap === 0) return '';
      const seconds = Array.from({ length: Math.max(2, Math.ceil((endS - startS) / drawEveryS) + 1) }, (_, k) =>
        Math.min(endS, startS + k * drawEveryS),
      );
      const top = (timeS: number) => y(readingC[Math.min(readingC.length - 1, Math.floor(timeS))]);
      const shape = area<number>()
        .digits(1)
        .x((timeS) => x(timeS))
        .y0(top)
        .y1((timeS) => Math.min(size.bottom, top(timeS) + ribbonDepth))(seconds);
      const room = x(endS) - x(startS);
      const said = `${ebcFromA430(a430).toFixed(0)}${room > unitRoom ? ' EBC' : ''}`;
      const number =
        room > numberRoom
          ? `<text class="ebc" x="${short(x(endS) - 4)}" y="${size.bottom - 6}" text-anchor="end">${said}</text>`
          : '';
      return `<pattern id="hatch${i}" width="${gap}" height="${gap}" patternUnits="userSpaceOnUse" patternTransform="rotate(45)"><path class="hatch" d="M0 0V${gap}"/></pattern><path class="hatched" fill="url(#hatch${i})" d="${shape}"/>${number}`;
    })
    .join('');
}

function band({ bands: { readingC } }: Forecast, frame: Frame): string {
  const edge = (column: Float64Array) =>
    `<path class="wanted" d="M${[...column].map((celsius, row) => at(frame, row * drawEveryS, celsius)).join('L')}"/>`;
  return edge(readingC.low) + edge(readingC.high);
}
