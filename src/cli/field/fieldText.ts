/** A field as a table: EBC of each sugar, darkest to the right, longest at the top. */

import type { Look } from '../../core/planning/aim.ts';
import { axisValue } from '../../core/planning/field/levers.ts';
import type { Spot } from '../../core/planning/field.ts';
import { ebcText } from '../plan/stepText.ts';
import { swatch } from '../swatch.ts';
import { table, wrapped } from '../table.ts';
import type { CookedField } from './cooked.ts';
import { leverNames } from './fieldOptions.ts';

const figure = (value: number): string => String(Number(value.toPrecision(3)));

export function fieldText({ spec: { x, y, request }, grid }: CookedField, painted: Look | undefined): string {
  const columns = Array.from({ length: x.count }, (_, i) => i);
  const rows = Array.from({ length: y.count }, (_, i) => y.count - 1 - i);
  const limits = new Map<string, string>();
  const cell = (spot: Spot | undefined): string => {
    for (const { limit, message } of spot?.refusals ?? []) if (!limits.has(limit)) limits.set(limit, message);
    if (!spot?.made) return spot && spot.refusals.length > 0 ? 'x' : '-';
    return `${painted ? `${swatch(spot.made[painted])} ` : ''}${ebcText(spot.made.ebc)}`;
  };
  const text = table(
    [
      { head: leverNames[y.lever], align: 'right' },
      ...columns.map((column) => ({ head: figure(axisValue(x, column)), align: 'right' as const })),
    ],
    rows.map((row) => [figure(axisValue(y, row)), ...columns.map((column) => cell(grid.spot(column, row)))]),
  );
  const notes = [...limits].map(([limit, message]) => `x  ${wrapped(`${limit}: ${message}`, '   ')}`);
  return [
    `EBC of a 10 % solution, ${request.route} route; from left to right ${leverNames[x.lever]}`,
    text,
    ...notes,
  ].join('\n\n');
}
