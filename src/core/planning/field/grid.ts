/** The lines of a field put together: spots by column and row, as far as they are there. */
import type { FieldLine, FieldSpec, Spot } from '../field.ts';

export interface Grid {
  readonly columns: number;
  readonly rows: number;
  /** Nothing where its line is still to come. */
  spot(column: number, row: number): Spot | undefined;
  /** Spot of the line nearest to the place that is there: what a coarse picture shows. */
  nearest(column: number, row: number): Spot | undefined;
}

export function gridOf({ x, y }: FieldSpec, lines: readonly FieldLine[]): Grid {
  const byPlace = new Map(lines.map((line) => [line.at, line]));
  const along = lines[0]?.along;
  const inLine = (line: FieldLine | undefined, column: number, row: number): Spot | undefined =>
    line?.spots[along === 'x' ? column : row];
  return {
    columns: x.count,
    rows: y.count,
    spot: (column, row) => inLine(byPlace.get(along === 'x' ? row : column), column, row),
    nearest(column, row) {
      const place = along === 'x' ? row : column;
      const line = lines.reduce<FieldLine | undefined>(
        (best, each) => (best && Math.abs(best.at - place) <= Math.abs(each.at - place) ? best : each),
        undefined,
      );
      return inLine(line, column, row);
    },
  };
}
