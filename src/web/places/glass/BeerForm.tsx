/** The rest of the beer, and the units that everything here is told in. */
import { Choice } from '../../parts/Choice.tsx';
import { SheetField } from '../../parts/SheetField.tsx';
import { DayField } from './DayField.tsx';
import type { GlassHand } from './useGlass.ts';

const volumes = [
  ['L', 'L'],
  ['gal', 'US gal'],
  ['imp gal', 'imp gal'],
] as const;
const gravities = [
  ['SG', 'SG'],
  ['P', '°Plato'],
] as const;
const colours = [
  ['EBC', 'EBC'],
  ['SRM', 'SRM'],
] as const;

export function BeerForm({ hand }: { readonly hand: GlassHand }) {
  const { draft, entries, units, type, chooseUnits, change } = hand;
  const field = { sheet: draft.sheet, entries, onText: type };
  return (
    <form className="glass-sheet" aria-label="The rest of the beer" onSubmit={(event) => event.preventDefault()}>
      <h2>The rest of the beer</h2>
      <div className="glass-thirds">
        <Choice
          label="Volumes in"
          value={units.volume}
          options={volumes}
          onChoose={(volume) => chooseUnits({ volume })}
        />
        <Choice
          label="Gravity in"
          value={units.gravity}
          options={gravities}
          onChoose={(gravity) => chooseUnits({ gravity })}
        />
        <Choice
          label="Colour in"
          value={units.colour}
          options={colours}
          onChoose={(colour) => chooseUnits({ colour })}
        />
      </div>
      <SheetField {...field} field="name" />
      <div className="glass-pairs">
        <SheetField {...field} field="volumeL" />
        <SheetField {...field} field="gravity" />
        <SheetField {...field} field="colour" />
        <SheetField {...field} field="attenuation" />
      </div>
      <details>
        <summary>Kettle, water, glass and bottling</summary>
        <div className="glass-pairs">
          <SheetField {...field} field="kettleLossL" />
          <SheetField {...field} field="pathCm" />
          <SheetField {...field} field="sodium" />
          <SheetField {...field} field="calcium" />
          <SheetField {...field} field="boughtPricePerKg" wide />
          <DayField
            label="Bottled on"
            day={draft.sheet.good.bottledOn}
            hint="tastings and reminders count from it"
            onDay={(bottledOn) => change((glass) => ({ ...glass, bottledOn }))}
          />
        </div>
      </details>
    </form>
  );
}
