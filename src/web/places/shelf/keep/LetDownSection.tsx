/** Letting a lot down to syrup: the water, the order that is not dangerous, and whether the syrup stays clear and sound. */
import { useState } from 'react';
import type { CrystalRisk, Crystals } from '../../../../core/lot/keep/crystals.ts';
import { type LetDown, type LetDownWish, letDown, letDownRanges as ranges } from '../../../../core/lot/keep/letDown.ts';
import { type Sheet, troubles } from '../../../parts/entry.ts';
import { grams } from '../../../parts/figures.ts';
import { plainEntry, quantityEntry } from '../../../parts/numberEntry.ts';
import { SheetFields } from '../../../parts/SheetFields.tsx';
import { useTemperatureUnit } from '../../../parts/TemperatureUnit.tsx';
import type { TemperatureUnit } from '../../../parts/temperature.ts';
import { massWords, type Shown } from '../shown.ts';
import { orderSteps } from './orderSteps.ts';
import { useRoom } from './room.ts';

type Wish = Omit<LetDownWish, 'keptC'>;

export function LetDownSection({ shown }: { readonly shown: Shown }) {
  const { unit } = useTemperatureUnit();
  const { roomC } = useRoom();
  const massKg = Math.max(ranges.massKg[0], shown.known.stock.kg || shown.known.madeKg.mid);
  const [sheet, setSheet] = useState<Sheet<Wish>>({ good: { massKg, brix: 75, sugarC: 20 }, texts: {} });
  const entries = wishEntries(unit);
  const wrong = Object.keys(troubles(sheet, entries)).length > 0;
  const told = answerTo(shown, { ...sheet.good, keptC: Math.min(ranges.keptC[1], Math.max(ranges.keptC[0], roomC)) });
  return (
    <section className="let-down" aria-labelledby="lot-let-down">
      <h2 id="lot-let-down">Let it down to syrup</h2>
      <div className="shelf-fields">
        <SheetFields sheet={sheet} entries={entries} onSheet={setSheet} />
      </div>
      <div role="status">
        {wrong ? null : told.kind === 'no' ? <p>Not so: {told.why}.</p> : <Answer told={told.letDown} unit={unit} />}
      </div>
    </section>
  );
}

type Told = { readonly kind: 'told'; readonly letDown: LetDown } | { readonly kind: 'no'; readonly why: string };

function answerTo(shown: Shown, wish: LetDownWish): Told {
  try {
    return { kind: 'told', letDown: letDown(shown.known.figures, wish) };
  } catch (error) {
    if (error instanceof RangeError) return { kind: 'no', why: error.message };
    throw error;
  }
}

function Answer({ told, unit }: { readonly told: LetDown; readonly unit: TemperatureUnit }) {
  const { waterKg, syrupKg, activity, growth, crystals } = told;
  return (
    <>
      <p>
        <span className="figure">{grams(waterKg)} g</span> of water; it makes {massWords(syrupKg)} of syrup.
      </p>
      <ol className="order">
        {orderSteps(told, unit).map((step) => (
          <li key={step}>{step}</li>
        ))}
      </ol>
      <p>{crystalsSay(crystals)}</p>
      <p>
        Water activity {activity.toFixed(2)}: what can grow at that is {growth.says}. {capital(growth.advice)}.
      </p>
      <p className="small quiet">
        Saturation beside invert sugar by Grover 1947, glucose by White 1962 (honey), growth by Beuchat 1981. A caution,
        and no date to use it by: throw away what ferments, froths or smells.
      </p>
    </>
  );
}

const risk: Readonly<Record<CrystalRisk, string>> = {
  none: 'will not crystallise',
  slow: 'may crystallise in months, sooner beside a stray crystal',
  likely: 'is likely to crystallise',
  sure: 'will crystallise',
};

function crystalsSay({ sucrose, sucroseRatio, glucose }: Crystals): string {
  const table = `Table sugar in it ${risk[sucrose]} (${sucroseRatio.toFixed(2)} of what the water holds)`;
  return glucose === 'none' ? `${table}; nor will glucose.` : `${table}; glucose ${risk[glucose]}, as in honey.`;
}

function capital(words: string): string {
  return `${words.charAt(0).toUpperCase()}${words.slice(1)}`;
}

function wishEntries(unit: TemperatureUnit) {
  return {
    massKg: quantityEntry<Wish, 'mass'>({
      label: 'Sugar',
      range: ranges.massKg,
      dimension: 'mass',
      unit: 'g',
      get: ({ massKg }) => massKg,
      set: (wish, massKg) => ({ ...wish, massKg }),
    }),
    brix: plainEntry<Wish>({
      label: 'Solids wanted',
      hint: '70 to 78 pours and keeps',
      unit: '°Bx',
      range: ranges.brix,
      get: ({ brix }) => brix,
      set: (wish, brix) => ({ ...wish, brix }),
    }),
    sugarC: quantityEntry<Wish, 'temperature'>({
      label: 'The sugar is now at',
      range: ranges.sugarC,
      dimension: 'temperature',
      unit,
      get: ({ sugarC }) => sugarC,
      set: (wish, sugarC) => ({ ...wish, sugarC }),
    }),
  };
}
