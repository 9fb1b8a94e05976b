/** A field worked out from end to end. */
import type { Kit } from '../../core/pan/kit.ts';
import { prepareKit } from '../../core/pan/preparedKit.ts';
import { type Grid, gridOf } from '../../core/planning/field/grid.ts';
import { createField, type FieldSpec, fieldLines } from '../../core/planning/field.ts';

export interface CookedField {
  readonly spec: FieldSpec;
  readonly kit: Kit;
  readonly sucroseKg: number;
  readonly grid: Grid;
}

export function cookedField(spec: FieldSpec, kit: Kit): CookedField {
  const field = createField(spec, prepareKit(kit));
  return { spec, kit, sucroseKg: field.sucroseKg, grid: gridOf(spec, fieldLines(spec).map(field.line)) };
}
