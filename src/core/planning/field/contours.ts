/** Lines of equal taste over the field, by marching squares (Lorensen & Cline 1987 in two dimensions; ambiguous saddles are parted by their middle). */

/** A piece of a line: from and to, in places of the grid (columns, rows). */
export type Segment = readonly [x1: number, y1: number, x2: number, y2: number];

/**
 * @param value of a spot by column and row; NaN where nothing is made, which no line enters
 * @param level of the line
 */
export function contour(
  columns: number,
  rows: number,
  value: (column: number, row: number) => number,
  level: number,
): readonly Segment[] {
  const segments: Segment[] = [];
  for (let row = 0; row + 1 < rows; row++) {
    for (let column = 0; column + 1 < columns; column++) {
      const corners = [
        value(column, row),
        value(column + 1, row),
        value(column + 1, row + 1),
        value(column, row + 1),
      ] as const;
      for (const [x1, y1, x2, y2] of cellSegments(corners, level)) {
        segments.push([column + x1, row + y1, column + x2, row + y2]);
      }
    }
  }
  return segments;
}

type Corners = readonly [number, number, number, number];
const cornerPlaces = [
  [0, 0],
  [1, 0],
  [1, 1],
  [0, 1],
] as const;

/** Corners run round the cell; the line crosses each side whose ends lie on either side of the level. */
function cellSegments(corners: Corners, level: number): readonly Segment[] {
  if (corners.some(Number.isNaN)) return [];
  const crossings = corners.flatMap((from, i): (readonly [number, number])[] => {
    const next = (i + 1) % 4;
    const to = corners[next];
    if (from >= level === to >= level) return [];
    const share = (level - from) / (to - from);
    const [[x1, y1], [x2, y2]] = [cornerPlaces[i], cornerPlaces[next]];
    return [[x1 + share * (x2 - x1), y1 + share * (y2 - y1)]];
  });
  const piece = (a: number, b: number): Segment => [...crossings[a], ...crossings[b]];
  if (crossings.length === 2) return [piece(0, 1)];
  if (crossings.length < 4) return [];
  const middle = corners.reduce((sum, each) => sum + each, 0) / 4;
  return middle >= level === corners[0] >= level ? [piece(0, 1), piece(2, 3)] : [piece(3, 0), piece(1, 2)];
}

export type Point = readonly [x: number, y: number];

/** Pieces that meet, put together to lines: each from end to end, or round to its beginning. Longest first. */
export function joined(segments: readonly Segment[]): readonly (readonly Point[])[] {
  const open = new Map<string, Segment[]>();
  const ends = ([x1, y1, x2, y2]: Segment): readonly Point[] => [
    [x1, y1],
    [x2, y2],
  ];
  for (const segment of segments) {
    for (const end of ends(segment)) open.set(keyOf(end), [...(open.get(keyOf(end)) ?? []), segment]);
  }
  const left = new Set(segments);
  /** From a point on, as far as pieces follow. */
  const follow = (from: Point): Point[] => {
    const points: Point[] = [];
    let at = from;
    for (;;) {
      const next = open.get(keyOf(at))?.find((segment) => left.has(segment));
      if (!next) return points;
      left.delete(next);
      const [a, b] = ends(next);
      at = keyOf(a) === keyOf(at) ? b : a;
      points.push(at);
    }
  };
  const lines: Point[][] = [];
  for (const segment of segments) {
    if (!left.delete(segment)) continue;
    const [a, b] = ends(segment);
    lines.push([...follow(a).reverse(), a, b, ...follow(b)]);
  }
  return lines.sort((a, b) => b.length - a.length);
}

/** Neighbouring cells reckon the same crossing, but for the last figures. */
const keyOf = ([x, y]: Point): string => `${x.toFixed(6)} ${y.toFixed(6)}`;
