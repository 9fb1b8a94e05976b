/** Priming as a person reads it: what to weigh, what comes of it, what pressure, what to mind. */
import { formulas } from '../../core/beer/formulas.ts';
import type { PrimingNumbers, PrimingRequest } from '../../core/beer/priming.ts';
import { primingCautions } from '../../core/beer/primingCautions.ts';
import type { Sugar } from '../../core/beer/sugar.ts';
import type { Range } from '../../core/twin/range.ts';
import { digits, massText, type Show, type UnitFamily, volumeText } from '../glass/shown.ts';
import { table, wrapped } from '../table.ts';

export function primeText(
  request: PrimingRequest,
  sugar: Sugar,
  numbers: PrimingNumbers<Range>,
  units: UnitFamily,
): string {
  const mass: Show = (kg) => massText(kg, units);
  const bottle = volumeText(request.bottleL, 'metric');
  const rows: readonly (readonly [string, Range, Show])[] = [
    [`weigh of ${sugar.name}`, numbers.massKg, mass],
    [`for each bottle of ${bottle}`, numbers.perBottleKg, mass],
    ['held before, g/L', numbers.residualGPerL, digits(2)],
    ['reaches, g/L', numbers.reachedGPerL, digits(2)],
    ['reaches, vol', numbers.reachedVolumes, digits(2)],
    ['pressure at 20 °C, bar above air', numbers.gaugePaAt20C, digits(2, 1e-5)],
    ['pressure at 30 °C, bar above air', numbers.gaugePaAt30C, digits(2, 1e-5)],
    ['alcohol added, % by volume', numbers.abvAdded, digits(2)],
    ['colour added, EBC', numbers.ebcAdded, digits(2)],
  ];
  const cautions = primingCautions(numbers, request.vessel).map(
    ({ level, text }) => `  ${wrapped(level === 'note' ? text : `${level.toUpperCase()}: ${text}`, '  ')}`,
  );
  return [
    table(
      [
        { head: '', align: 'left' },
        { head: 'middle', align: 'right' },
        { head: '10-90 %', align: 'right' },
      ],
      rows.map(([label, range, show]) => [label, show(range.mid), `${show(range.low)} to ${show(range.high)}`]),
    ),
    `Mind\n${cautions.join('\n')}`,
    `By\n  ${wrapped(formulas.carbonDioxide, '  ')}`,
  ].join('\n\n');
}
