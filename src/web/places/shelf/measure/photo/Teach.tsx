/** A dilution whose colour a photometer gave teaches what this phone's camera does. Kept on this device, and used in the same light. */
import { useState } from 'react';
import type { PictureRead } from '../../../../../core/colour/photo/readPicture.ts';
import type { Beforehand } from '../../../../../core/lot/known.ts';
import {
  dilutionByPhotometer,
  dilutionOfKnown,
  type KnownDilution,
  lightPathCm,
} from '../../../../../core/lot/measure/colour.ts';
import type { PhotoSetUp } from '../../../../../core/lot/note.ts';
import { type Entries, type Sheet, troubles, typed } from '../../../../parts/entry.ts';
import { plainEntry } from '../../../../parts/numberEntry.ts';
import { SheetField } from '../../../../parts/SheetField.tsx';
import { newId } from '../../../../records/newId.ts';
import type { Shown } from '../../shown.ts';
import { byPhotometer } from './byPhotometer.ts';
import { TaughtList } from './TaughtList.tsx';
import { teachPhone } from './taughtPhone.ts';

interface TeachProps {
  readonly shown: Shown;
  readonly known: Beforehand;
  readonly setUp: PhotoSetUp;
  readonly read: PictureRead | undefined;
  /** This picture has taught already. */
  readonly done: boolean;
  readonly onTaught: (id: string) => void;
}

interface Typed {
  readonly a430: number | undefined;
}

const absorbance = plainEntry<Typed>({
  label: 'Absorbance at 430 nm of this dilution',
  hint: 'by a photometer, in 1 cm, less that of water',
  unit: '',
  range: [0.03, 2],
  get: ({ a430 }) => a430 ?? 0,
  set: (_, a430) => ({ a430 }),
});
/** It may stay empty: not every picture teaches. */
const entries: Entries<Typed> = {
  a430: {
    ...absorbance,
    show: (of) => (of.a430 === undefined ? '' : absorbance.show(of)),
    put: (into, text) => (text.trim() === '' ? { a430: undefined } : absorbance.put(into, text)),
  },
};
const blank: Sheet<Typed> = { good: { a430: undefined }, texts: {} };

export function Teach({ shown, known, setUp, read, done, onTaught }: TeachProps) {
  const [sheet, setSheet] = useState(blank);
  const { a430 } = sheet.good;
  const isTyped = a430 !== undefined && Object.keys(troubles(sheet, entries)).length === 0;
  const measured = byPhotometer(shown.notes, known);
  const told = read?.kind === 'told' && !done ? read : undefined;

  function teach(dilution: KnownDilution) {
    if (!told) return;
    const id = newId();
    const { absorbance, sd } = told;
    const at = new Date().toISOString();
    teachPhone({ id, at, light: setUp.light, of: shown.lot.name, absorbance, sd, ...dilution });
    setSheet(blank);
    onTaught(id);
  }
  const ofLot = measured && dilutionOfKnown(setUp, measured, known);

  return (
    <details className="photo-teach">
      <summary>Teach the phone</summary>
      <p className="small">
        Photograph a dilution whose colour a photometer gave, just as you photograph all others. It tells what this
        camera and this light do, and later pictures in the same light are read by it. It is kept on this device alone.
      </p>
      {ofLot && (
        <button type="button" disabled={!told} onClick={() => teach(ofLot)}>
          By this lot’s photometer: {(ofLot.a430Path / lightPathCm(setUp)).toFixed(2)} in 1 cm
        </button>
      )}
      <SheetField
        sheet={sheet}
        entries={entries}
        field="a430"
        onText={(field, text) => setSheet(typed(sheet, entries, field, text))}
      />
      <button
        type="button"
        disabled={!told || !isTyped}
        onClick={() => a430 !== undefined && teach(dilutionByPhotometer(setUp, a430))}
      >
        Teach it by this picture
      </button>
      {!told && !done && <p className="small quiet">Take a picture first that can be read.</p>}
      <TaughtList />
    </details>
  );
}
