/** What each step was worth: how long, how hot, and as minutes at one temperature. */
import type { Doings } from '../../../../core/book/doings.ts';
import { browningAtC, dosesOf, invertingAtC } from '../../../../core/book/doses.ts';
import { stepNames } from '../../../parts/stepNames.ts';
import { useTemperatureUnit } from '../../../parts/TemperatureUnit.tsx';
import { degrees, inUnit } from '../../../parts/temperature.ts';
import { WideTable } from '../../../parts/WideTable.tsx';

export function DoseTable({ doings }: { readonly doings: Doings }) {
  const { unit } = useTemperatureUnit();
  const doses = dosesOf(doings);
  if (doses.length === 0) return null;
  const shown = (celsius: number | null) => (celsius === null ? '–' : `${inUnit(celsius, unit).toFixed(1)} °${unit}`);
  return (
    <WideTable label="Steps and their heat, as a table">
      <table className="doses">
        <caption>
          Steps and their heat
          <span className="quiet">
            Inverting counts as minutes at {degrees(invertingAtC, unit)}, browning as minutes at{' '}
            {degrees(browningAtC, unit)}: a hot minute is worth more than one.
          </span>
        </caption>
        <thead>
          <tr>
            <th scope="col">Step</th>
            <th scope="col">Took</th>
            <th scope="col">Mean</th>
            <th scope="col">Hottest</th>
            <th scope="col">Inverting</th>
            <th scope="col">Browning</th>
            <th scope="col">Spoonfuls</th>
          </tr>
        </thead>
        <tbody>
          {doses.map((dose) => (
            <tr key={dose.startS}>
              <th scope="row">{stepNames[dose.kind]}</th>
              <td>{dose.minutes.toFixed(0)} min</td>
              <td>{shown(dose.meanC)}</td>
              <td>{shown(dose.hottestC)}</td>
              <td>{dose.invertingMinutes.toFixed(0)} min</td>
              <td>{dose.browningMinutes.toFixed(0)} min</td>
              <td>{Number(dose.spoonfuls.toFixed(1))}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </WideTable>
  );
}
