/** What a cook goes by, and the course that was expected of it. */
import type { Begun } from '../../../core/log/bodies.ts';
import { centralValues } from '../../../core/pan/model.ts';
import type { PreparedKit } from '../../../core/pan/preparedKit.ts';
import { simulate } from '../../../core/pan/simulate.ts';
import { tracesOf } from '../../../core/planning/forecast.ts';

export interface Planned {
  readonly name: string;
  readonly begun: Begun;
  readonly members: number;
  readonly endS: number;
  readonly hottestC: number;
  /** What the thermometer should show, a row each second. */
  readonly courseC: Float64Array;
  /** Colour that it should land at, A430 per cm of a 10 % solution. */
  readonly a430: number;
}

export function plannedOf(begun: Begun, prepared: PreparedKit, members: number): Planned {
  const { steps, amounts, request } = begun;
  const values = centralValues(prepared.kit);
  const course = simulate({ steps, charge: amounts.charge }, prepared, values);
  const name = 'name' in request ? String(request.name) : 'A cook';
  const endS = course.steps.at(-1)?.endS ?? 0;
  const { readingC, a430 } = tracesOf(course, values);
  return { name, begun, members, endS, hottestC: course.hottestC, courseC: readingC, a430: a430[a430.length - 1] };
}
