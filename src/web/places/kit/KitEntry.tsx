/** What is typed of a kit: its things, the place, and prices; with what is forgotten when it is saved. */
import { useEffect, useState } from 'react';
import { useLocation } from 'wouter';
import type { KitRecord } from '../../../api/kit.ts';
import { defaultKit, type Kit } from '../../../core/pan/kit.ts';
import { type Sheet, troubles, typed } from '../../parts/entry.ts';
import { KeepKit } from '../../parts/kit/KeepKit.tsx';
import { KitFields } from '../../parts/kit/KitFields.tsx';
import { kitEntries } from '../../parts/kit/kitEntries.ts';
import { kitToKeep } from '../../parts/kit/kitToKeep.ts';
import { useKitKeeping } from '../../parts/kit/useKitKeeping.ts';
import { SheetField } from '../../parts/SheetField.tsx';
import { useTemperatureUnit } from '../../parts/TemperatureUnit.tsx';
import { Barometer } from './Barometer.tsx';
import { priceEntries } from './priceEntries.ts';
import type { KitHand } from './useKitInHand.ts';

const sheetOf = (kit: Kit): Sheet<Kit> => ({ good: kit, texts: {} });

export function KitEntry({ hand }: { readonly hand: KitHand }) {
  const { unit } = useTemperatureUnit();
  const [, go] = useLocation();
  const [base, setBase] = useState(hand.record ?? null);
  const [sheet, setSheet] = useState(() => sheetOf(hand.record?.kit ?? defaultKit));
  const entries = { ...kitEntries(unit), ...priceEntries };
  const changed = JSON.stringify(sheet.good) !== JSON.stringify(base?.kit ?? defaultKit);
  const take = (record: KitRecord) => {
    setBase(record);
    setSheet(sheetOf(record.kit));
    if (record.id !== hand.record?.id) go(`/kit/${record.id}`);
  };
  // What a check or a cook has taught since is followed, unless the kit is being changed here: then saving joins both.
  const newer = hand.record && hand.record.version !== base?.version ? hand.record : undefined;
  useEffect(() => {
    if (newer && !changed) {
      setBase(newer);
      setSheet(sheetOf(newer.kit));
    }
  }, [newer, changed]);
  const keeping = useKitKeeping({ kit: sheet.good, base, changed, saved: take, theirs: take });
  const wrong = Object.keys(troubles(sheet, entries)).length > 0;
  const onText = (field: string, text: string) => setSheet((now) => typed(now, entries, field, text));
  const forgets = base ? forgottenBy(base.kit, kitToKeep(sheet.good, base.kit)) : 0;

  return (
    <form className="sheet" aria-labelledby="what-it-is" onSubmit={(event) => event.preventDefault()}>
      <h2 id="what-it-is">What it is</h2>
      <KitFields
        sheet={sheet}
        entries={entries}
        refusals={{}}
        onText={onText}
        onChange={(good) => setSheet((now) => ({ ...now, good }))}
      />
      <Barometer onAltitude={(altitudeM) => setSheet(({ good }) => sheetOf({ ...good, altitudeM }))} />
      <details>
        <summary>Prices</summary>
        <div className="pairs">
          {Object.keys(priceEntries).map((field) => (
            <SheetField key={field} sheet={sheet} entries={entries} field={field} onText={onText} />
          ))}
        </div>
      </details>
      {forgets > 0 && (
        <p className="kit-note" role="status">
          Saving this forgets what was learned of {forgets === 1 ? 'one number' : `${forgets} numbers`} that no longer
          hold{forgets === 1 ? 's' : ''} for what you changed.
        </p>
      )}
      {wrong ? (
        <p className="small">A field can’t be read: mend it, then the kit can be saved.</p>
      ) : (
        <KeepKit keeping={keeping} />
      )}
    </form>
  );
}

function forgottenBy(before: Kit, after: Kit): number {
  return (before.learned?.names.length ?? 0) - (after.learned?.names.length ?? 0);
}
