/** The frame of a pan line for paper: where times and temperatures stand, and its axes. */
import { scaleLinear } from 'd3-scale';

export interface Size {
  readonly width: number;
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
  readonly height: number;
  /** Room that a bold letter takes. */
  readonly letter: number;
}

export const size: Size = { width: 720, left: 40, right: 712, top: 34, bottom: 250, height: 318, letter: 6.6 };
/** Below this all is warming up, and gets a quarter of the height, as on the screen. */
const kneeC = 100;
const coldestC = 20;

export interface Frame {
  readonly x: (timeS: number) => number;
  readonly y: (celsius: number) => number;
  readonly endMin: number;
  readonly topC: number;
  readonly size: Size;
}

export function frameFor(endS: number, hottestC: number, within = size): Frame {
  const { left, right, top, bottom } = within;
  const topC = Math.min(220, Math.ceil((Math.max(135, hottestC) + 4) / 5) * 5);
  const endMin = Math.max(1, Math.ceil((endS / 60) * 1.02));
  const knee = bottom - (bottom - top) * 0.24;
  const time = scaleLinear([0, endMin * 60], [left, right]).clamp(true);
  const height = scaleLinear([coldestC, kneeC, topC], [bottom, knee, top]).clamp(true);
  return { x: (timeS) => time(timeS), y: (celsius) => height(celsius), endMin, topC, size: within };
}

export const short = (length: number): string => String(Number(length.toFixed(1)));
export const at = ({ x, y }: Frame, timeS: number, celsius: number): string =>
  `${short(x(timeS))} ${short(y(celsius))}`;

export function axes({ x, y, endMin, topC, size }: Frame): string {
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

/** The syrup at a time: how hot it is, and its colour as it is painted. */
export interface Painted {
  readonly timeS: number;
  readonly celsius: number;
  readonly colour: string;
}

export const ribbonDepth = 34;
const mostPieces = 120;

/** The syrup's colour below the line, one piece for each stretch. */
export function ribbon<Row>(rows: readonly Row[], paint: (row: Row) => Painted, { x, y, size }: Frame): string {
  const every = Math.max(1, Math.ceil(rows.length / mostPieces));
  const kept = rows.filter((_, i) => i % every === 0 || i === rows.length - 1).map(paint);
  return kept
    .slice(1)
    .map(({ timeS, celsius, colour }, i) => {
      const from = kept[i];
      const [a, b] = [y(from.celsius), y(celsius)];
      const low = (top: number) => short(Math.min(size.bottom, top + ribbonDepth));
      const [left, right] = [short(x(from.timeS)), short(x(timeS) + 0.4)];
      return `<path fill="${colour}" d="M${left} ${short(a)}L${right} ${short(b)}V${low(b)}L${left} ${low(a)}Z"/>`;
    })
    .join('');
}

/** Where deeds stand below the frame: the dial, and what was given. */
export const railsOf = ({ bottom }: Size) => ({ dial: bottom + 18, given: bottom + 34 });
