/** Temperatures and minutes of the holds, a row each, in Celsius or Fahrenheit. */
import { SheetField } from '../../parts/SheetField.tsx';
import { useTemperatureUnit } from '../../parts/TemperatureUnit.tsx';
import type { AimFormProps } from './AimForm.tsx';

const holds = {
  pale: ['invert'],
  bright: ['invert', 'brown'],
  deep: ['invert', 'brown', 'roast'],
} as const;

export function HeatFields({ sheet, entries, refusals, onText }: AimFormProps) {
  const { unit, choose } = useTemperatureUnit();
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
      {holds[sheet.good.route].map((hold) => (
        <div key={hold} className="pairs">
          <SheetField {...field} field={`${hold}C`} />
          <SheetField {...field} field={`${hold}Minutes`} />
        </div>
      ))}
    </fieldset>
  );
}
