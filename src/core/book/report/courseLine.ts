/** Pieces of the pan line of a plan, from its course. */
import { line } from 'd3-shape';
import type { Course } from '../../pan/course.ts';
import type { Traces } from '../../planning/forecast.ts';
import { stepTitles } from '../words.ts';
import { type Frame, short } from './panFrame.ts';

/** Distance of the rows that are drawn, s. */
const drawnEveryS = 10;

export const endOf = ({ steps: spans }: Course): number => spans.at(-1)?.endS ?? 0;

export function reading({ readingC }: Traces, { x, y }: Frame, kind: string): string {
  const rows = [...readingC.keys()].filter((row) => row % drawnEveryS === 0 || row === readingC.length - 1);
  const path = line<number>()
    .digits(1)
    .x((row) => x(row))
    .y((row) => y(readingC[row]))(rows);
  return `<path class="halo" d="${path}"/><path class="${kind}" d="${path}"/>`;
}

export function steps({ steps: spans }: Course, { x, size }: Frame): string {
  const titles = stepTitles(spans.map(({ kind }) => kind));
  return spans
    .map(({ startS, endS }, i) => {
      const [left, right] = [x(startS), x(endS)];
      const name =
        right - left > titles[i].length * size.letter
          ? `<text class="step" x="${short(left + 3)}" y="14">${titles[i]}</text>`
          : '';
      return `<line class="mark" x1="${short(left)}" x2="${short(left)}" y1="4" y2="${size.bottom}"/>${name}`;
    })
    .join('');
}

export function ends({ steps: spans }: Course, { readingC }: Traces, { x, y }: Frame): string {
  return spans
    .map(({ endS }) => {
      const row = Math.min(readingC.length - 1, Math.floor(endS));
      return `<circle class="ring" cx="${short(x(endS))}" cy="${short(y(readingC[row]))}" r="3.5"/>`;
    })
    .join('');
}
