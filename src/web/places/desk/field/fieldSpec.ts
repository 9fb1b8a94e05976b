/** Which field is asked for: its two levers, the lever of the slider, and how far each goes. */
import { type Lever, leversOf, openAxis } from '../../../../core/planning/field/levers.ts';
import { type FieldSpec, usualField } from '../../../../core/planning/field.ts';
import type { PlanRequest, Route } from '../../../../core/planning/request.ts';

export interface Levers {
  readonly x: Lever;
  readonly y: Lever;
}

const columns = 48;
const rows = 32;

/** @param chosen by hand; the usual ones where they do nothing on the request's route */
export function leversFor(request: PlanRequest, chosen: Levers | undefined): Levers {
  const usual = usualField(request);
  const open = leversOf(request.route);
  if (chosen && chosen.x !== chosen.y && open.includes(chosen.x) && open.includes(chosen.y)) return chosen;
  return { x: usual.x.lever, y: usual.y.lever };
}

/** The same with one of them changed: chosen twice, they change places. */
export function withLever(levers: Levers, axis: 'x' | 'y', lever: Lever): Levers {
  const other = axis === 'x' ? 'y' : 'x';
  return { ...levers, [axis]: lever, ...(levers[other] === lever && { [other]: levers[axis] }) };
}

const holds: readonly Lever[] = ['roastMinutes', 'brownMinutes', 'invertMinutes'];

/** The last hold that is no axis of the picture. */
export function sliderOf(route: Route, { x, y }: Levers): Lever | undefined {
  const open = leversOf(route);
  return holds.find((lever) => open.includes(lever) && lever !== x && lever !== y);
}

/** What is the same wherever the spot lies is one field: the levers' own values are set aside, and so is the name. */
export function specFor(request: PlanRequest, { x, y }: Levers): FieldSpec {
  const axes = { x: openAxis(x, request, columns), y: openAxis(y, request, rows) };
  return { request: { ...request, name: '', [x]: axes.x.low, [y]: axes.y.low }, ...axes };
}
