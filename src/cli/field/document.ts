/** A field as JSON. */
import { axisValue } from '../../core/planning/field/levers.ts';
import type { CookedField } from './cooked.ts';

export function fieldDocument({ spec, kit, sucroseKg, grid, band: cooked }: CookedField) {
  const { request, x, y } = spec;
  const band = cooked();
  const spots = Array.from({ length: grid.rows }, (_, row) =>
    Array.from({ length: grid.columns }, (__, column) => {
      const { refusals = [], made = null } = grid.spot(column, row) ?? {};
      const { low, high } = band.at(column / (grid.columns - 1), row / (grid.rows - 1));
      const known = made && Number.isFinite(low) && Number.isFinite(high);
      const a430Range = known ? { low: low * made.a430, mid: made.a430, high: high * made.a430 } : null;
      return { x: axisValue(x, column), y: axisValue(y, row), refusals, made, a430Range };
    }),
  );
  return { format: 'umberpan-field-1', request, kit, x, y, sucroseKg, rows: spots };
}
