/** One sugar: which, how much, when; and what a person can tell of it. */
import type { WhenAdded } from '../../../core/beer/glass.ts';
import type { KeptDose } from '../../../core/beer/keptGlass.ts';
import { knownOf } from '../../../core/lot/known.ts';
import { Choice } from '../../parts/Choice.tsx';
import { dayText } from '../../parts/dayText.ts';
import { SheetField } from '../../parts/SheetField.tsx';
import { AlkaliFields } from './AlkaliFields.tsx';
import { colourPrints, extractPrints } from './printedAs.ts';
import { massShown } from './shown.ts';
import { nameOfSugar, newBoughtSugar, type ShelfLot, sugarOfShelf } from './sugars.ts';
import type { GlassHand } from './useGlass.ts';

export const times: readonly (readonly [WhenAdded, string])[] = [
  ['kettle', 'into the kettle'],
  ['late', 'late in the boil'],
  ['fermenter', 'into the fermenter'],
];

interface DoseProps {
  readonly hand: GlassHand;
  readonly dose: KeptDose;
  readonly at: number;
}

export function DoseForm({ hand, dose, at }: DoseProps) {
  const { draft, entries, type, lots, units, changeDose, chooseSugar, removeDose } = hand;
  const { sugar, added } = dose;
  const field = { sheet: draft.sheet, entries, onText: type };
  const name = nameOfSugar(sugar, lots);
  const lot = sugar.kind === 'lot' ? lots.find(({ id }) => id === sugar.lotId) : undefined;
  const chosen = sugar.kind === 'lot' ? sugar.lotId : 'bought';
  const options = [
    ...(sugar.kind === 'lot' && !lot ? [[sugar.lotId, name] as const] : []),
    ...lots.map(({ id, lot }) => [id, lotName(lot)] as const),
    ['bought', 'A bought sugar'] as const,
  ];
  return (
    <fieldset className="dose">
      <legend>
        Sugar {at + 1}: {name}
      </legend>
      <Choice
        label="From"
        value={chosen}
        options={options}
        onChoose={(id) => chooseSugar(at, id === 'bought' ? newBoughtSugar : sugarOfShelf(id))}
      />
      {sugar.kind === 'bought' && <BoughtFields hand={hand} at={at} />}
      <div className="glass-pairs dose-when">
        <SheetField {...field} field={`doses.${at}.mass`} hint={stockHint(dose, lot, massShown(units))} />
        <Choice label="When" value={added} options={times} onChoose={(when) => changeDose(at, { added: when })} />
      </div>
      <details>
        <summary>Alkali, fermentability, price</summary>
        <AlkaliFields hand={hand} sugar={sugar} at={at} />
        <div className="glass-pairs">
          <SheetField {...field} field={`doses.${at}.fermentable`} />
          <SheetField {...field} field={`doses.${at}.pricePerKg`} />
        </div>
      </details>
      <button type="button" className="plain" onClick={() => removeDose(at)}>
        Take out<span className="unseen"> {name}</span>
      </button>
    </fieldset>
  );
}

function BoughtFields({ hand, at }: Omit<DoseProps, 'dose'>) {
  const { draft, entries, type, as, printedAs } = hand;
  const field = { sheet: draft.sheet, entries, onText: type };
  return (
    <div className="glass-pairs">
      <SheetField {...field} field={`doses.${at}.name`} wide />
      <Choice
        label="Extract as"
        value={as.extract}
        options={namesOf(extractPrints)}
        onChoose={(extract) => printedAs({ extract })}
      />
      <SheetField {...field} field={`doses.${at}.extract`} />
      <Choice
        wide
        label="Colour as"
        value={as.colour}
        options={namesOf(colourPrints)}
        onChoose={(colour) => printedAs({ colour })}
      />
      <SheetField {...field} field={`doses.${at}.colour`} />
      <SheetField {...field} field={`doses.${at}.inverted`} />
    </div>
  );
}

function namesOf<Key extends string>(prints: Readonly<Record<Key, { readonly name: string }>>) {
  return (Object.keys(prints) as Key[]).map((key) => [key, prints[key].name] as const);
}

function lotName({ name, madeAt }: ShelfLot['lot']): string {
  return `${name}, ${dayText(madeAt)}`;
}

function stockHint({ massKg }: KeptDose, lot: ShelfLot | undefined, show: (kg: number) => string): string | undefined {
  if (!lot) return undefined;
  const stock = knownOf(lot.lot, lot.notes?.map(({ note }) => note) ?? []).stock.kg;
  return massKg > stock ? `more than there is: ${show(stock)}` : `of ${show(stock)}`;
}
