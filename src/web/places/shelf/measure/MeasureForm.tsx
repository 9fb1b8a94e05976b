/** The fields of one way of measuring, and what the reading comes to. */
import { useState } from 'react';
import { passesOverWhite } from '../../../../core/colour/tristimulus.ts';
import type { Beforehand } from '../../../../core/lot/known.ts';
import type { Reading } from '../../../../core/lot/note.ts';
import { type Sheet, troubles } from '../../../parts/entry.ts';
import { SheetFields } from '../../../parts/SheetFields.tsx';
import { useTemperatureUnit } from '../../../parts/TemperatureUnit.tsx';
import type { Shown } from '../shown.ts';
import type { Notes } from '../useNotes.tsx';
import { DilutionHelper } from './DilutionHelper.tsx';
import { MethodChoices } from './MethodChoices.tsx';
import { methodForms, type TypedMethod } from './methods.ts';
import { resultWords } from './resultWords.ts';
import { Swatches } from './Swatches.tsx';
import { TeachScreen } from './screen/TeachScreen.tsx';

interface FormProps {
  readonly method: TypedMethod;
  readonly shown: Shown;
  readonly known: Beforehand;
  readonly notes: Notes;
}

export function MeasureForm({ method, shown, known, notes }: FormProps) {
  const { unit } = useTemperatureUnit();
  const form = methodForms[method];
  const entries = form.entries(unit);
  const [sheet, setSheet] = useState<Sheet<Reading>>({ good: form.start, texts: {} });
  const [touched, setTouched] = useState(false);
  const reading = sheet.good;
  const wrong = Object.keys(troubles(sheet, entries)).length > 0;
  const result = resultWords(reading, known);
  const can = touched && !wrong && result.kind === 'says' && !notes.busy;

  function change(next: Sheet<Reading>) {
    setTouched(true);
    setSheet(next);
  }
  const put = (good: Reading) => change({ good, texts: {} });

  return (
    <>
      {/* Not of the form: a key that ends a number there must not keep a measurement here. */}
      {method === 'comparison' && <TeachScreen />}
      <form
        aria-label={form.name}
        onSubmit={(event) => {
          event.preventDefault();
          if (can) notes.keep({ kind: 'measured', at: new Date().toISOString(), reading }, () => setTouched(false));
        }}
      >
        <ol className="small steps">
          {form.steps.map((step) => (
            <li key={step}>{step}</li>
          ))}
        </ol>
        {reading.method === 'absorbance' && (
          <DilutionHelper shown={shown} pathCm={reading.pathCm} shows onTake={(made) => put({ ...reading, ...made })} />
        )}
        {reading.method === 'comparison' && (
          <DilutionHelper
            shown={shown}
            pathCm={passesOverWhite * reading.depthCm}
            onTake={(made) => put({ ...reading, ...made })}
          />
        )}
        <div className="shelf-fields">
          <SheetFields sheet={sheet} entries={entries} onSheet={change} />
          <MethodChoices reading={reading} onChange={(good) => change({ ...sheet, good })} />
        </div>
        {reading.method === 'comparison' && (
          <Swatches shown={shown} reading={reading} chosen={touched} onChoose={(good) => change({ ...sheet, good })} />
        )}
        <p className="result" role="status">
          {touched && !wrong && (result.kind === 'none' ? `This gives nothing: ${result.why}.` : <Says {...result} />)}
        </p>
        <button type="submit" className="main" disabled={!can}>
          Keep this measurement
        </button>
      </form>
    </>
  );
}

function Says({ value, range }: { readonly value: string; readonly range: string }) {
  return (
    <>
      <strong className="figure">{value}</strong> <span className="quiet">{range}, 8 in 10</span>
    </>
  );
}
