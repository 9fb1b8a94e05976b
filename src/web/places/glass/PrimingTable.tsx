/** What to weigh for priming, and what comes of it. */
import type { PrimingNumbers } from '../../../core/beer/priming.ts';
import { a430FromEbc } from '../../../core/colour/scales.ts';
import type { Range } from '../../../core/twin/range.ts';
import { formatQuantity } from '../../../core/units/formatQuantity.ts';
import { bracketed, colourFactor, digits, type GlassUnits, massShown, reachShown, type Show } from './shown.ts';

interface PrimingTableProps {
  readonly numbers: PrimingNumbers<Range>;
  readonly units: GlassUnits;
}

export function PrimingTable({ numbers, units }: PrimingTableProps) {
  const mass = massShown(units);
  const pressure: Show = (pa) => (units.volume === 'L' ? formatQuantity(pa, 'bar', 2) : formatQuantity(pa, 'psi', 1));
  const rows: readonly (readonly [string, Range, Show])[] = [
    ['Weigh', numbers.massKg, mass],
    ['For one bottle', numbers.perBottleKg, mass],
    ['Held before, g/L', numbers.residualGPerL, digits(2)],
    ['Reaches, volumes', numbers.reachedVolumes, digits(2)],
    ['Reaches, g/L', numbers.reachedGPerL, digits(2)],
    ['Above the air at 20 °C', numbers.gaugePaAt20C, pressure],
    ['Above the air at 30 °C', numbers.gaugePaAt30C, pressure],
    ['Alcohol added, %', numbers.abvAdded, digits(2)],
    [`Colour added, ${units.colour}`, numbers.ebcAdded, digits(2, colourFactor(units) * a430FromEbc(1))],
  ];
  return (
    <table className="glass-numbers">
      <caption className="unseen">Priming</caption>
      <thead>
        <tr>
          <th scope="col">
            <span className="unseen">What</span>
          </th>
          <th scope="col">middle (8 in 10)</th>
        </tr>
      </thead>
      <tbody>
        {rows.map(([label, range, show]) => (
          <tr key={label}>
            <th scope="row">{label}</th>
            <td>
              <strong>{show(range.mid)}</strong>
              <span className="within">{bracketed(reachShown(range, show))}</span>
            </td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}
