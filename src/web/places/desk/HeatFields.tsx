/** Temperatures and minutes of the holds, a row each, in Celsius or Fahrenheit. */

import { waterPerSugar } from '../../../core/planning/amounts.ts';
import { holdsOf, ownHolds, withFurtherHold, withoutFurtherHold } from '../../../core/planning/holds.ts';
import { type PlanRequest, usualDissolveC } from '../../../core/planning/request.ts';
import { SheetField } from '../../parts/SheetField.tsx';
import { useTemperatureUnit } from '../../parts/TemperatureUnit.tsx';
import type { AimFormProps } from './AimForm.tsx';
import { furtherField } from './aimEntries.ts';

export function HeatFields({ sheet, entries, refusals, onText, onChange }: AimFormProps) {
  const { unit, choose } = useTemperatureUnit();
  const own = ownHolds(sheet.good);
  const added = withFurtherHold(sheet.good);
  const { moreHolds: further = [] } = sheet.good;
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
      <div className="pairs">
        <SheetField {...field} field="dissolveC" hint={waterHint(sheet.good)} wide />
      </div>
      {holdsOf(sheet.good).map((hold) => (
        <div key={hold} className="pairs">
          <SheetField {...field} field={`${hold}C`} />
          <SheetField {...field} field={`${hold}Minutes`} />
        </div>
      ))}
      {further.map((_, at) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: a further hold is known by its place alone
        <div key={at} className="further-hold">
          <div className="pairs">
            <SheetField {...field} field={furtherField(at, 'celsius')} />
            <SheetField {...field} field={furtherField(at, 'minutes')} />
          </div>
          <button type="button" className="plain" onClick={() => onChange(withoutFurtherHold(at, sheet.good))}>
            Take away<span className="unseen"> further hold {at + 1}</span>
          </button>
        </div>
      ))}
      <div className="heat-acts">
        <button type="button" disabled={!added} onClick={() => added && onChange(added)}>
          Add a hold
        </button>
        <button type="button" disabled={Object.keys(own).length === 0} onClick={() => onChange(own)}>
          Back to the route’s own holds
        </button>
      </div>
    </fieldset>
  );
}

function waterHint({ dissolveC = usualDissolveC }: PlanRequest): string {
  return `all sugar in solution: takes ${(1000 * waterPerSugar(dissolveC)).toFixed(0)} g of water for each kg`;
}
