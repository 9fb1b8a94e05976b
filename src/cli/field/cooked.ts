/** A field worked out from end to end. */
import type { Kit } from '../../core/pan/kit.ts';
import { prepareKit } from '../../core/pan/preparedKit.ts';
import { type ColourBand, fieldBand } from '../../core/planning/field/band.ts';
import { type Grid, gridOf } from '../../core/planning/field/grid.ts';
import { createField, type FieldLine, type FieldSpec, fieldLines } from '../../core/planning/field.ts';

export interface CookedField {
  readonly spec: FieldSpec;
  readonly kit: Kit;
  readonly sucroseKg: number;
  readonly lines: readonly FieldLine[];
  readonly grid: Grid;
  /** How sure its colours are; cooked when it is asked for. */
  readonly band: () => ColourBand;
}

export function cookedField(spec: FieldSpec, kit: Kit): CookedField {
  const prepared = prepareKit(kit);
  const field = createField(spec, prepared);
  const { sucroseKg } = field;
  const lines = fieldLines(spec).map(field.line);
  return { spec, kit, sucroseKg, lines, grid: gridOf(spec, lines), band: () => fieldBand(spec, prepared, sucroseKg) };
}
