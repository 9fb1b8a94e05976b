/** Every fact of a kit, as fields. */
import type { Kit } from '../../../core/pan/kit.ts';
import { Choice } from '../Choice.tsx';
import type { Entries, Sheet } from '../entry.ts';
import { SheetField } from '../SheetField.tsx';
import { materialNames, optionsOf, stoveNames, thermometerNames } from './kitNames.ts';

export interface KitFieldsProps {
  readonly sheet: Sheet<Kit>;
  readonly entries: Entries<Kit>;
  readonly refusals: Readonly<Record<string, string>>;
  readonly onText: (field: string, text: string) => void;
  readonly onChange: (kit: Kit) => void;
}

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
        <SheetField {...field} field="water.alkalinityMgPerL" />
        <SheetField {...field} field="water.hardnessMgPerL" />
        <SheetField {...field} field="altitudeM" />
        <SheetField {...field} field="roomC" />
      </fieldset>
    </div>
  );
}
