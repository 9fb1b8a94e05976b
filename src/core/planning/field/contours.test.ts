import { expect, test } from 'vitest';
import { contour, joined } from './contours.ts';

test('a line over a plane is straight, and where the plane has its level', () => {
  const pieces = contour(4, 3, (column, row) => column + 0.5 * row, 1.6);
  expect(pieces.length).toBeGreaterThan(0);
  for (const [x1, y1, x2, y2] of pieces) {
    expect(x1 + 0.5 * y1).toBeCloseTo(1.6, 12);
    expect(x2 + 0.5 * y2).toBeCloseTo(1.6, 12);
  }
});

test('lines about a hill close: every end meets another', () => {
  const named = (x: number, y: number) => `${x.toFixed(9)},${y.toFixed(9)}`;
  const hill = (column: number, row: number) => -((column - 5.2) ** 2) - (row - 4.7) ** 2;
  const ends = contour(11, 11, hill, -9).flatMap(([x1, y1, x2, y2]) => [named(x1, y1), named(x2, y2)]);
  const counts = new Map<string, number>();
  for (const end of ends) counts.set(end, (counts.get(end) ?? 0) + 1);
  expect([...counts.values()].every((count) => count === 2)).toBe(true);
});

test('a saddle is parted by its middle, and nothing is drawn beside a gap', () => {
  const saddle = [1, 0, 1, 0];
  const at = (column: number, row: number) => saddle[row === 0 ? column : 3 - column] as number;
  expect(contour(2, 2, at, 0.4)).toHaveLength(2);
  expect(contour(2, 2, (column, row) => (column + row === 0 ? Number.NaN : column), 0.5)).toEqual([]);
});

test('pieces join to one line: closed about a hill, from edge to edge over a plane', () => {
  const hill = (column: number, row: number) => -((column - 5.2) ** 2) - (row - 4.7) ** 2;
  const pieces = contour(11, 11, hill, -9);
  const around = joined(pieces);
  expect(around).toHaveLength(1);
  expect(around[0]).toHaveLength(pieces.length + 1);
  const [first, last] = [around[0]?.[0], around[0]?.at(-1)];
  expect(first?.[0]).toBeCloseTo(last?.[0] ?? Number.NaN, 6);
  const across = joined(contour(9, 5, (column, row) => column + 0.1 * row, 3.15));
  expect(across).toHaveLength(1);
  expect(across[0]?.map(([, row]) => row).sort((a, b) => a - b)).toEqual(expect.arrayContaining([0, 4]));
});
