/** Every fact of a kit, as fields. */
import { Choice } from '../../parts/Choice.tsx';
import { SheetField } from '../../parts/SheetField.tsx';
import type { KitFormProps } from './KitForm.tsx';
import { materialNames, optionsOf, stoveNames, thermometerNames } from './kitNames.ts';

type KitFieldsProps = Pick<KitFormProps, 'sheet' | 'entries' | 'refusals' | 'onText' | 'onChange'>;

export function KitFields({ sheet, entries, refusals, onText, onChange }: KitFieldsProps) {
  const kit = sheet.good;
  const field = { sheet, entries, refusals, onText };
  return (
    <div className="kit-fields">
      <SheetField {...field} field="name" />
      <fieldset className="pairs">
        <legend>Stove</legend>
        <Choice
          wide
          label="Kind"
          value={kit.stove.kind}
          options={optionsOf(stoveNames)}
          onChoose={(kind) => onChange({ ...kit, stove: { ...kit.stove, kind } })}
        />
        <SheetField {...field} field="stove.ratedPowerW" />
        <SheetField {...field} field="stove.notches" />
      </fieldset>
      <fieldset className="pairs">
        <legend>Pan</legend>
        <Choice
          wide
          label="Material"
          value={kit.pan.material}
          options={optionsOf(materialNames)}
          refusal={refusals['pan.material']}
          onChoose={(material) => onChange({ ...kit, pan: { ...kit.pan, material } })}
        />
        <SheetField {...field} field="pan.diameterM" />
        <SheetField {...field} field="pan.heightM" />
        <SheetField {...field} field="pan.massKg" wide />
      </fieldset>
      <fieldset className="pairs">
        <legend>Thermometer, spoon, water and place</legend>
        <Choice
          wide
          label="Thermometer"
          value={kit.thermometer.kind}
          options={optionsOf(thermometerNames)}
          onChoose={(kind) => onChange({ ...kit, thermometer: { kind } })}
        />
        <SheetField {...field} field="spoonM3" wide />
        <SheetField {...field} field="water.alkalinityMgPerL" wide />
        <SheetField {...field} field="altitudeM" />
        <SheetField {...field} field="roomC" />
      </fieldset>
    </div>
  );
}
