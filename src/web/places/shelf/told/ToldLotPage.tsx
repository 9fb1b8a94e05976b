/** A sugar that was made before, or elsewhere, written in by hand. */
import { useState } from 'react';
import { Link, useLocation } from 'wouter';
import { Choice } from '../../../parts/Choice.tsx';
import { type Sheet, troubles, typed } from '../../../parts/entry.ts';
import { SheetField } from '../../../parts/SheetField.tsx';
import { likelyHueIndex } from '../../../parts/syrupPaint.ts';
import { useTitle } from '../../../parts/useTitle.ts';
import { failureOf } from '../../../records/failureOf.ts';
import { newId } from '../../../records/newId.ts';
import { useMakeLot } from '../../../records/useLots.ts';
import { DayField } from '../../glass/DayField.tsx';
import { dayHere, timeOn } from '../../glass/days.ts';
import { Vessel } from '../drawn/Vessel.tsx';
import { alkaliOf, alkalis } from './alkali.ts';
import { firstTold, lotOfTold, type Told, toldEntries } from './told.ts';

export function ToldLotPage() {
  const [sheet, setSheet] = useState<Sheet<Told>>({ good: firstTold, texts: {} });
  const [day, setDay] = useState(() => dayHere(new Date()));
  const [id] = useState(newId);
  const [, go] = useLocation();
  const making = useMakeLot();
  useTitle('A sugar written in · Shelf');
  const told = sheet.good;
  const entries = toldEntries(told);
  const wrong = Object.keys(troubles(sheet, entries)).length > 0;
  const set = (change: Partial<Told>) => setSheet({ ...sheet, good: { ...told, ...change } });
  const a430 = told.ebc / 25;

  return (
    <main id="main" className="shelf told">
      <header className="shelf-head">
        <div>
          <Link href="/shelf" className="back">
            Shelf
          </Link>
          <h1>Write in a sugar</h1>
        </div>
      </header>
      <form
        aria-label="A sugar"
        onSubmit={(event) => {
          event.preventDefault();
          if (wrong || making.isPending) return;
          const lot = lotOfTold(told, timeOn(day, new Date()));
          making.mutate({ id, lot }, { onSuccess: () => go(`/shelf/${id}`) });
        }}
      >
        <div className="told-picture">
          <Vessel
            form={told.form}
            tone={{ a430, hueIndex: likelyHueIndex(a430), waterShare: told.water }}
            left={1}
            tag=""
          />
          <span className="board" aria-hidden="true" />
        </div>
        <div className="shelf-fields">
          <SheetField sheet={sheet} entries={entries} field="name" wide onText={type} />
          <Choice
            label="Form"
            value={told.form}
            options={[
              ['hard', 'hard, in pieces'],
              ['syrup', 'syrup'],
            ]}
            onChoose={(form) => set({ form, water: form === 'hard' ? 0.03 : 0.22 })}
          />
          <DayField label="Made on" day={day} onDay={(chosen) => chosen && setDay(chosen)} />
          {['mass', 'ebc', 'water', 'inverted'].map((field) => (
            <SheetField key={field} sheet={sheet} entries={entries} field={field} onText={type} />
          ))}
          <Choice label="Browned with" value={told.alkali} options={alkalis} onChoose={(alkali) => set({ alkali })} />
          {alkaliOf(told)?.gramsPerKgSucrose ? (
            <SheetField sheet={sheet} entries={entries} field="alkaliGPerKg" onText={type} />
          ) : null}
        </div>
        <p role="status">{making.error ? failureOf(making.error, 'Not kept') : ''}</p>
        <button type="submit" className="main" disabled={wrong || making.isPending}>
          Put it on the shelf
        </button>
      </form>
    </main>
  );

  function type(field: string, text: string) {
    setSheet(typed(sheet, entries, field, text));
  }
}
