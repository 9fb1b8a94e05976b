/** A field as JSON. */
import { axisValue } from '../../core/planning/field/levers.ts';
import type { CookedField } from './cooked.ts';

export function fieldDocument({ spec, kit, sucroseKg, grid }: CookedField) {
  const { request, x, y } = spec;
  const spots = Array.from({ length: grid.rows }, (_, row) =>
    Array.from({ length: grid.columns }, (__, column) => {
      const { refusals = [], made = null } = grid.spot(column, row) ?? {};
      return { x: axisValue(x, column), y: axisValue(y, row), refusals, made };
    }),
  );
  return { format: 'umberpan-field-1', request, kit, x, y, sucroseKg, rows: spots };
}
