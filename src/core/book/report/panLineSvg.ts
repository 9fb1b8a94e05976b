/** The pan line of a cook that is over, as a picture for paper: readings, what the twin believed, the syrup's colour, steps and deeds. */
import { scaleLinear } from 'd3-scale';
import { area, line } from 'd3-shape';
import type { Belief } from '../../advice/followed.ts';
import { believedColour } from '../../colour/pool.ts';
import { ebcFromA430 } from '../../colour/scales.ts';
import type { CookState } from '../../log/fold.ts';
import { type Doings, doingsOf } from '../doings.ts';
import { stepWords } from '../words.ts';
import { escaped } from './markup.ts';

const size = { width: 720, left: 40, right: 712, top: 34, bottom: 250, height: 318 };
const ribbonDepth = 34;
/** Below this all is warming up, and gets a quarter of the height, as on the screen. */
const kneeC = 100;
const coldestC = 20;

interface Frame {
  readonly x: (timeS: number) => number;
  readonly y: (celsius: number) => number;
  readonly endMin: number;
  readonly topC: number;
}

export function panLineSvg(state: CookState, rows: readonly Belief[]): string {
  const doings = doingsOf(state);
  const frame = frameOf(doings, rows);
  const tests = state.deeds.flatMap((entry) => (entry.kind === 'spoonTest' ? [entry] : []));
  const said = `${doings.shown.length} readings, ${doings.deeds.length} deeds and ${tests.length} spoon tests in ${(doings.endS / 60).toFixed(0)} minutes.`;
  return [
    `<svg viewBox="0 0 ${size.width} ${size.height}" role="img" aria-label="${escaped(`Pan line: ${said}`)}">`,
    axes(frame),
    ribbon(rows, frame),
    steps(doings, state, frame),
    believed(rows, frame),
    `<path class="dots" d="${doings.shown.map(({ timeS, valueC }) => `M${at(frame, timeS, valueC)}h0`).join('')}"/>`,
    deeds(doings, frame),
    ...tests.map(({ timeS, body: { a430 } }) => spoonTest(timeS, a430, rows, frame)),
    '</svg>',
  ].join('\n');
}

function frameOf({ endS, shown }: Doings, rows: readonly Belief[]): Frame {
  const hottestC = [...shown.map(({ valueC }) => valueC), ...rows.map(({ believedC }) => believedC.high)].reduce(
    (most, value) => Math.max(most, value),
    135,
  );
  const topC = Math.min(220, Math.ceil((hottestC + 4) / 5) * 5);
  const endMin = Math.max(1, Math.ceil((endS / 60) * 1.02));
  const knee = size.bottom - (size.bottom - size.top) * 0.24;
  const time = scaleLinear([0, endMin * 60], [size.left, size.right]).clamp(true);
  const height = scaleLinear([coldestC, kneeC, topC], [size.bottom, knee, size.top]).clamp(true);
  return { x: (timeS) => time(timeS), y: (celsius) => height(celsius), endMin, topC };
}

const short = (length: number): string => String(Number(length.toFixed(1)));
const at = ({ x, y }: Frame, timeS: number, celsius: number): string => `${short(x(timeS))} ${short(y(celsius))}`;

function axes({ x, y, endMin, topC }: Frame): string {
  const step = [5, 10, 15, 20, 30, 60].find((each) => endMin / each <= 10) ?? 60;
  const minutes = Array.from({ length: Math.floor(endMin / step) + 1 }, (_, i) => i * step);
  const degrees = [20, 60, 100, 110, 120, 130, 140, 150, 160, 170].filter((each) => each <= topC);
  return [
    ...degrees.map(
      (c) =>
        `<line class="grid" x1="${size.left}" x2="${size.right}" y1="${short(y(c))}" y2="${short(y(c))}"/><text x="${size.left - 6}" y="${short(y(c) + 4)}" text-anchor="end">${c}${c === 100 ? ' °C' : ''}</text>`,
    ),
    ...minutes.map(
      (minute) =>
        `<text x="${short(x(minute * 60))}" y="${size.height - 6}" text-anchor="middle">${minute}${minute === 0 ? ' min' : ''}</text>`,
    ),
  ].join('\n');
}

/** One piece for each stretch, in its middle colour. */
function ribbon(rows: readonly Belief[], { x, y }: Frame): string {
  const every = Math.max(1, Math.ceil(rows.length / 120));
  const kept = rows.filter((_, i) => i % every === 0 || i === rows.length - 1);
  return kept
    .slice(1)
    .map((row, i) => {
      const from = kept[i];
      const [a, b] = [y(from.believedC.mid), y(row.believedC.mid)];
      const low = (top: number) => short(Math.min(size.bottom, top + ribbonDepth));
      const [left, right] = [short(x(from.timeS)), short(x(row.timeS) + 0.4)];
      const colour = believedColour(row.unseen.a430.mid, row.unseen.waterShare.mid);
      return `<path fill="${colour}" d="M${left} ${short(a)}L${right} ${short(b)}V${low(b)}L${left} ${low(a)}Z"/>`;
    })
    .join('');
}

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

const rails = { dial: size.bottom + 18, water: size.bottom + 34, alkali: size.bottom + 34 };

function deeds({ deeds: all }: Doings, { x }: Frame): string {
  let lastX = Number.NEGATIVE_INFINITY;
  return all
    .map(({ timeS, deed }) => {
      const place = x(timeS);
      if (deed.kind === 'water') return `<circle class="deed" cx="${short(place)}" cy="${rails.water}" r="2.6"/>`;
      if (deed.kind === 'alkali') return `<path class="deed" d="M${short(place)} ${rails.alkali + 5}l-4.5-10h9z"/>`;
      if (deed.kind !== 'heat' || place - lastX < 13) return '';
      lastX = place;
      return `<text x="${short(place)}" y="${rails.dial}" text-anchor="middle">${Number(deed.notch.toFixed(1))}</text>`;
    })
    .join('');
}

function spoonTest(timeS: number, a430: number | null, rows: readonly Belief[], frame: Frame): string {
  const row = rows.findLast((one) => one.timeS <= timeS);
  const [x, y] = [frame.x(timeS), frame.y(row?.believedC.mid ?? kneeC)];
  const said =
    a430 === null
      ? ''
      : `<text x="${short(x)}" y="${short(y - 9)}" text-anchor="middle">${ebcFromA430(a430).toFixed(0)} EBC</text>`;
  return `<path class="test" d="M${short(x)} ${short(y - 6)}l6 6l-6 6l-6-6z"/>${said}`;
}
