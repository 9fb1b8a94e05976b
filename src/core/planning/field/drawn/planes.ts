/** What the field says at any place, read between its spots: for the paint, the lines and the words beside it. */

import type { Refusal } from '../../../advice/limits.ts';
import type { FieldLine, FieldSpec } from '../../field.ts';
import type { PlanRequest } from '../../request.ts';
import { type TasteName, tasteNames } from '../../taste.ts';
import type { ColourBand } from '../band.ts';
import { gridOf } from '../grid.ts';
import { axisShare } from '../levers.ts';
import { type Plane, planeAt, planeOf } from '../plane.ts';

export interface Planes {
  readonly lnA430: Plane;
  readonly hueIndex: Plane;
  readonly waterShare: Plane;
  readonly minutes: Plane;
  readonly taste: Readonly<Record<TasteName, Plane>>;
}

/** @param lines at least one */
export function planesOf(spec: FieldSpec, lines: readonly FieldLine[]): Planes {
  return {
    lnA430: planeOf(spec, lines, ({ a430 }) => Math.log(a430)),
    hueIndex: planeOf(spec, lines, ({ hueIndex }) => hueIndex),
    waterShare: planeOf(spec, lines, ({ waterShare }) => waterShare),
    minutes: planeOf(spec, lines, ({ minutes }) => minutes),
    taste: Object.fromEntries(
      tasteNames.map((name) => [name, planeOf(spec, lines, ({ taste }) => taste[name])]),
    ) as Planes['taste'],
  };
}

/** A place of the field, 0 to 1 along each axis. */
export interface Place {
  readonly u: number;
  readonly v: number;
}

export function placeOf({ x, y }: FieldSpec, request: PlanRequest): Place {
  return { u: axisShare(x, request[x.lever]), v: axisShare(y, request[y.lever]) };
}

/** What a cook at a place makes. */
export interface MadeHere {
  readonly a430: number;
  readonly hueIndex: number;
  readonly waterShare: number;
  readonly minutes: number;
  readonly taste: Readonly<Record<TasteName, number>>;
}

/** Nothing where nothing is made. */
export function madeAt(planes: Planes, { u, v }: Place): MadeHere | undefined {
  const at = (plane: Plane): number => planeAt(plane, u, v);
  const lnA430 = at(planes.lnA430);
  if (Number.isNaN(lnA430)) return undefined;
  return {
    a430: Math.exp(lnA430),
    hueIndex: at(planes.hueIndex),
    waterShare: at(planes.waterShare),
    minutes: at(planes.minutes),
    taste: Object.fromEntries(tasteNames.map((name) => [name, at(planes.taste[name])])) as MadeHere['taste'],
  };
}

/** Limits that the spot nearest to a place would break. */
export function refusalsAt(spec: FieldSpec, lines: readonly FieldLine[], { u, v }: Place): readonly Refusal[] {
  const grid = gridOf(spec, lines);
  const nearest = (share: number, count: number) => Math.round(Math.min(1, Math.max(0, share)) * (count - 1));
  return grid.nearest(nearest(u, grid.columns), nearest(v, grid.rows))?.refusals ?? [];
}

/** The colour's 10 % and 90 % marks as factors of it; nothing where they are not known. */
export function bandAt(band: ColourBand | undefined, { u, v }: Place): ReturnType<ColourBand['at']> | undefined {
  const marks = band?.at(u, v);
  return marks && Number.isFinite(marks.low) && Number.isFinite(marks.high) ? marks : undefined;
}
