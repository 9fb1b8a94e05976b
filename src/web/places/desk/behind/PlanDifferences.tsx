/** What differs between the plan on the Desk and the one behind it, as a small table. */
import { differencesOf } from '../../../../core/book/differences.ts';
import type { Picture } from '../../../parts/panLine/picture.ts';
import { useTemperatureUnit } from '../../../parts/TemperatureUnit.tsx';
import { planFacts } from './planFacts.ts';

interface PlanDifferencesProps {
  readonly here: Picture;
  readonly behind: Picture;
  readonly name: string;
}

export function PlanDifferences({ here, behind, name }: PlanDifferencesProps) {
  const { unit } = useTemperatureUnit();
  const rows = differencesOf([planFacts(here, unit), planFacts(behind, unit)])
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
