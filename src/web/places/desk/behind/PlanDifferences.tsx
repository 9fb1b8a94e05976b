/** What differs between the plan on the Desk and the one behind it, as a small table. */
import { type Fact, rowsBeside } from '../../../../core/book/differences.ts';
import { planFacts } from '../../../../core/book/planFacts.ts';
import { a430FromEbc } from '../../../../core/colour/scales.ts';
import { ebcOf } from '../../../parts/figures.ts';
import type { Picture } from '../../../parts/panLine/picture.ts';
import { useTemperatureUnit } from '../../../parts/TemperatureUnit.tsx';
import { inUnit, type TemperatureUnit } from '../../../parts/temperature.ts';

interface PlanDifferencesProps {
  readonly here: Picture;
  readonly behind: Picture;
  readonly name: string;
}

/** Temperatures in the unit of the page, colours to as many figures as it tells them with. */
function asOnThePage(fact: Fact, unit: TemperatureUnit): Fact {
  if (fact.unit === '°C') return { ...fact, unit: `°${unit}`, value: inUnit(fact.value, unit) };
  return fact.unit === 'EBC' ? { ...fact, value: Number(ebcOf(a430FromEbc(fact.value))) } : fact;
}

export function PlanDifferences({ here, behind, name }: PlanDifferencesProps) {
  const { unit } = useTemperatureUnit();
  const facts = ({ plan, ends }: Picture) => planFacts(plan, ends).map((fact) => asOnThePage(fact, unit));
  const rows = rowsBeside([facts(here), facts(behind)])
    .map(({ values, digits, ...row }) => ({ ...row, shown: values.map((value) => value?.toFixed(digits) ?? '–') }))
    .filter(({ shown: [mine, theirs] }) => mine !== theirs);
  if (rows.length === 0) return <p role="status">Both plans are alike.</p>;
  return (
    <table className="plan-differences">
      <caption>
        What differs <span className="quiet">all else is alike</span>
      </caption>
      <thead>
        <tr>
          <th scope="col">What</th>
          <th scope="col">On the Desk</th>
          <th scope="col">{name}, behind</th>
        </tr>
      </thead>
      <tbody>
        {rows.map(({ what, unit: counted, shown }) => (
          <tr key={what}>
            <th scope="row">
              {what}
              {counted && <span className="quiet">, {counted}</span>}
            </th>
            <td>{shown[0]}</td>
            <td>{shown[1]}</td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}
