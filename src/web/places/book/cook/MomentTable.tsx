/** One moment of a cook in numbers: as the twin saw it then, and as it is known now. */
import type { HindsightRow } from '../../../../core/book/hindsight.ts';
import type { Range } from '../../../../core/twin/range.ts';
import type { Unseen } from '../../../../core/twin/unseen.ts';
import { ebcOf, span } from '../../../parts/figures.ts';
import { useTemperatureUnit } from '../../../parts/TemperatureUnit.tsx';
import { inUnit, type TemperatureUnit } from '../../../parts/temperature.ts';
import { WideTable } from '../../../parts/WideTable.tsx';
import type { Row } from '../../stove/view.ts';

interface MomentTableProps {
  readonly rows: readonly Row[];
  readonly hindsight: readonly HindsightRow[] | undefined;
  readonly atS: number;
}

type Seen = { readonly believedC: Range; readonly unseen: Unseen<Range> };

export function MomentTable({ rows, hindsight, atS }: MomentTableProps) {
  const { unit } = useTemperatureUnit();
  const then = rows.findLast(({ timeS }) => timeS <= atS);
  const now = hindsight?.findLast(({ timeS }) => timeS <= atS);
  if (!then) return null;
  const reading = rows.findLast(({ timeS, readingC }) => timeS <= atS && readingC !== undefined)?.readingC;
  return (
    <WideTable label="At this moment, as a table">
      <table className="moment">
        <caption>
          At this moment
          <span className="quiet">Ranges hold 8 in 10.</span>
        </caption>
        <thead>
          <tr>
            <th scope="col">What</th>
            <th scope="col">Then</th>
            <th scope="col">As known now</th>
          </tr>
        </thead>
        <tbody>
          <tr>
            <th scope="row">Thermometer</th>
            <td colSpan={2}>
              {reading === undefined ? 'not read yet' : `${inUnit(reading, unit).toFixed(1)} °${unit}`}
            </td>
          </tr>
          {linesOf(unit).map(({ name, show }) => (
            <tr key={name}>
              <th scope="row">{name}</th>
              <td>{show(then)}</td>
              <td>{now ? show(now) : '–'}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </WideTable>
  );
}

const percent = (value: number): string => (100 * value).toFixed(value < 0.1 ? 1 : 0);

function linesOf(unit: TemperatureUnit): readonly { readonly name: string; readonly show: (seen: Seen) => string }[] {
  return [
    {
      name: 'Syrup',
      show: ({ believedC }) => `${span(believedC, (celsius) => inUnit(celsius, unit).toFixed(1))} °${unit}`,
    },
    { name: 'Water', show: ({ unseen }) => `${span(unseen.waterShare, percent)} %` },
    { name: 'Inverted', show: ({ unseen }) => `${span(unseen.inverted, percent)} %` },
    { name: 'Hot pH', show: ({ unseen }) => span(unseen.ph, (ph) => ph.toFixed(1)) },
    { name: 'Colour', show: ({ unseen }) => `${span(unseen.a430, ebcOf)} EBC` },
  ];
}
