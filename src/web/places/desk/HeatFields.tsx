/** Temperatures and minutes of the holds, a row each, in Celsius or Fahrenheit. */

import { holdsOf, ownHolds } from '../../../core/planning/holds.ts';
import { SheetField } from '../../parts/SheetField.tsx';
import { useTemperatureUnit } from '../../parts/TemperatureUnit.tsx';
import type { AimFormProps } from './AimForm.tsx';

export function HeatFields({ sheet, entries, refusals, onText, onChange }: AimFormProps) {
  const { unit, choose } = useTemperatureUnit();
  const own = ownHolds(sheet.good);
  const field = { sheet, entries, onText, refusals };
  return (
    <fieldset className="heat">
      <legend>Heat</legend>
      <div className="unit-pick">
        {(['C', 'F'] as const).map((each) => (
          <button key={each} type="button" aria-pressed={unit === each} onClick={() => choose(each)}>
            °{each}
          </button>
        ))}
      </div>
      {holdsOf(sheet.good).map((hold) => (
        <div key={hold} className="pairs">
          <SheetField {...field} field={`${hold}C`} />
          <SheetField {...field} field={`${hold}Minutes`} />
        </div>
      ))}
      <button type="button" disabled={Object.keys(own).length === 0} onClick={() => onChange(own)}>
        Back to the route’s own holds
      </button>
    </fieldset>
  );
}
