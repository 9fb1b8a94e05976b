/** Lines of equal taste, and of the colour wished for, as paths with a place for their name. */
import { curveBasis, line } from 'd3-shape';
import type { TasteName } from '../../taste.ts';
import { contour, joined, type Point } from '../contours.ts';
import type { Plane } from '../plane.ts';
import type { Layout } from './layout.ts';
import type { Planes } from './planes.ts';

interface LineStyle {
  readonly levels: readonly number[];
  readonly dash: string;
  /** How far along itself a line is named, so that names of several don't meet. */
  readonly namedAt: number;
}

/** Lines of each taste have their own dash. */
export const lineStyles: Readonly<Record<TasteName, LineStyle>> = {
  fruit: { levels: [1, 2, 3, 4, 5, 6, 7, 8, 9], dash: '', namedAt: 0.5 },
  toffee: { levels: [2, 4, 6, 8], dash: '12 4', namedAt: 0.35 },
  roast: { levels: [2, 4, 6, 8], dash: '6 4', namedAt: 0.65 },
  burnt: { levels: [1, 3, 6], dash: '2 3', namedAt: 0.5 },
  alkali: { levels: [3, 6, 9], dash: '9 3 2 3', namedAt: 0.78 },
};

export interface Named {
  readonly key: string;
  readonly path: string;
  readonly dash: string;
  readonly name: string;
  /** Where the name stands and how it lies, degrees; nothing when the line is too short for it. */
  readonly label: { readonly x: number; readonly y: number; readonly turn: number } | undefined;
}

const drawn = line<Point>().curve(curveBasis);

function linesOf(plane: Plane, level: number, layout: Layout): readonly (readonly Point[])[] {
  const { columns, rows, values } = plane;
  const value = (column: number, row: number): number => values[row * columns + column] ?? Number.NaN;
  return joined(contour(columns, rows, value, level)).map((points) =>
    points.map(([x, y]) => [layout.across(x / (columns - 1)), layout.down(y / (rows - 1))] as const),
  );
}

/** Lines shorter than this are cut-offs of the grid, px. */
const shortest = 26;

/** A point a length along a line, whose pieces are so long. */
function pointAlong(points: readonly Point[], lengths: readonly number[], length: number): Point {
  let left = length;
  for (const [i, each] of lengths.entries()) {
    left -= each;
    if (left <= 0) return points[i + 1] ?? [0, 0];
  }
  return points.at(-1) ?? [0, 0];
}

function named(points: readonly Point[], name: string, dash: string, namedAt: number, key: string): Named | undefined {
  const lengths = points.slice(1).map(([x, y], i) => Math.hypot(x - (points[i]?.[0] ?? x), y - (points[i]?.[1] ?? y)));
  const whole = lengths.reduce((sum, each) => sum + each, 0);
  if (whole < shortest) return undefined;
  const path = drawn([...points]) ?? '';
  const room = name.length * 6.5 + 8;
  if (whole < room * 1.4) return { key, path, dash, name, label: undefined };
  const from = Math.min(whole - room, Math.max(0, namedAt * whole - room / 2));
  const ends = [pointAlong(points, lengths, from), pointAlong(points, lengths, from + room)] as const;
  const [[x1, y1], [x2, y2]] = ends[0][0] <= ends[1][0] ? ends : ([ends[1], ends[0]] as const);
  const turn = (Math.atan2(y2 - y1, x2 - x1) * 180) / Math.PI;
  const [x, y] = pointAlong(points, lengths, from + room / 2);
  return { key, path, dash, name, label: { x, y, turn } };
}

export function tasteLines(planes: Planes, shown: readonly TasteName[], layout: Layout): readonly Named[] {
  return shown.flatMap((taste) => {
    const { levels, dash, namedAt } = lineStyles[taste];
    return levels.flatMap((level) =>
      linesOf(planes.taste[taste], level, layout).flatMap((points, i) => {
        const line = named(points, `${taste} ${level}`, dash, namedAt, `${taste} ${level} ${i}`);
        return line ? [line] : [];
      }),
    );
  });
}

/** Where the colour wished for lies. */
export function wishLines(planes: Planes, a430: number, name: string, layout: Layout): readonly Named[] {
  return linesOf(planes.lnA430, Math.log(a430), layout).flatMap((points, i) => {
    const line = named(points, name, '', 0.15, `wish ${i}`);
    return line ? [line] : [];
  });
}
