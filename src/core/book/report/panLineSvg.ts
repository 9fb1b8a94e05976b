/** The pan line of a cook that is over, as a picture for paper: readings, what the twin believed, the syrup's colour, steps and deeds. */
import { area, line } from 'd3-shape';
import type { Belief } from '../../advice/followed.ts';
import { believedColour } from '../../colour/pool.ts';
import { ebcFromA430 } from '../../colour/scales.ts';
import type { CookState } from '../../log/fold.ts';
import { type Doings, doingsOf } from '../doings.ts';
import { stepWords } from '../words.ts';
import { escaped } from './markup.ts';
import { at, axes, type Frame, frameFor, ribbon, short, size } from './panFrame.ts';
import { score } from './score.ts';

/** Where a spoon test stands of which nobody knows how hot the syrup was. */
const unknownC = 100;

export function panLineSvg(state: CookState, rows: readonly Belief[]): string {
  const doings = doingsOf(state);
  const frame = frameOf(doings, rows);
  const tests = state.deeds.flatMap((entry) => (entry.kind === 'spoonTest' ? [entry] : []));
  const said = `${doings.shown.length} readings, ${doings.deeds.length} deeds and ${tests.length} spoon tests in ${(doings.endS / 60).toFixed(0)} minutes.`;
  return [
    `<svg viewBox="0 0 ${size.width} ${size.height}" role="img" aria-label="${escaped(`Pan line: ${said}`)}">`,
    axes(frame),
    ribbon(rows, painted, frame),
    steps(doings, state, frame),
    believed(rows, frame),
    `<path class="dots" d="${doings.shown.map(({ timeS, valueC }) => `M${at(frame, timeS, valueC)}h0`).join('')}"/>`,
    score(doings.deeds, frame),
    ...tests.map(({ timeS, body: { a430 } }) => spoonTest(timeS, a430, rows, frame)),
    '</svg>',
  ].join('\n');
}

function frameOf({ endS, shown }: Doings, rows: readonly Belief[]): Frame {
  const hottestC = [...shown.map(({ valueC }) => valueC), ...rows.map(({ believedC }) => believedC.high)].reduce(
    (most, value) => Math.max(most, value),
    Number.NEGATIVE_INFINITY,
  );
  return frameFor(endS, hottestC);
}

/** Each stretch in its middle colour. */
const painted = ({ timeS, believedC, unseen }: Belief) => ({
  timeS,
  celsius: believedC.mid,
  colour: believedColour(unseen.a430.mid, unseen.waterShare.mid),
});

function believed(rows: readonly Belief[], { x, y }: Frame): string {
  const band = area<Belief>()
    .digits(1)
    .x(({ timeS }) => x(timeS))
    .y0(({ believedC }) => y(believedC.low))
    .y1(({ believedC }) => y(believedC.high))([...rows]);
  const middle = line<Belief>()
    .digits(1)
    .x(({ timeS }) => x(timeS))
    .y(({ believedC }) => y(believedC.mid))([...rows]);
  return `<path class="band" d="${band ?? ''}"/><path class="middle" d="${middle ?? ''}"/>`;
}

function steps({ spans }: Doings, state: CookState, { x, y }: Frame): string {
  const planned = state.begun?.body.steps ?? [];
  return spans
    .map(({ index, kind, startS, endS }) => {
      const [left, right] = [x(startS), x(endS)];
      const name =
        right - left > 34 ? `<text class="step" x="${short(left + 3)}" y="14">${stepWords[kind]}</text>` : '';
      const { bandC, end } = planned[index];
      const mark = `<line class="mark" x1="${short(left)}" x2="${short(left)}" y1="4" y2="${size.bottom}"/>`;
      if ('reachedC' in end) return mark + name;
      const [low, high] = [y(bandC[0]), y(bandC[1])];
      return `${mark}${name}<rect class="wanted" x="${short(left)}" width="${short(right - left)}" y="${short(high)}" height="${short(low - high)}"/>`;
    })
    .join('');
}

function spoonTest(timeS: number, a430: number | null, rows: readonly Belief[], frame: Frame): string {
  const row = rows.findLast((one) => one.timeS <= timeS);
  const [x, y] = [frame.x(timeS), frame.y(row?.believedC.mid ?? unknownC)];
  const said =
    a430 === null
      ? ''
      : `<text x="${short(x)}" y="${short(y - 9)}" text-anchor="middle">${ebcFromA430(a430).toFixed(0)} EBC</text>`;
  return `<path class="test" d="M${short(x)} ${short(y - 6)}l6 6l-6 6l-6-6z"/>${said}`;
}
