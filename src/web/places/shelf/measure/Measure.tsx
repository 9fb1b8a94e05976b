/** Measuring a lot: a way is chosen, what it shows is typed in, and what that comes to is seen before it is kept. */
import { useState } from 'react';
import { beforehand } from '../../../../core/lot/known.ts';
import type { Method } from '../../../../core/lot/note.ts';
import { Picks } from '../../../parts/Picks.tsx';
import type { Shown } from '../shown.ts';
import type { Notes } from '../useNotes.tsx';
import { MeasuredList } from './MeasuredList.tsx';
import { MeasureForm } from './MeasureForm.tsx';
import { methodWords } from './methods.ts';
import { PhotoForm } from './photo/PhotoForm.tsx';

interface MeasureProps {
  readonly shown: Shown;
  readonly notes: Notes;
}

const ways = (Object.keys(methodWords) as Method[]).map((value) => ({
  value,
  name: methodWords[value].name,
  says: methodWords[value].says,
}));

export function Measure({ shown, notes }: MeasureProps) {
  const [method, setMethod] = useState<Method>('refractometer');
  const known = beforehand(shown.lot, shown.known.solids?.range);
  return (
    <section className="measure" aria-labelledby="lot-measure">
      <h2 id="lot-measure">Measure</h2>
      <Picks legend="By" value={method} options={ways} onPick={setMethod} row />
      {method === 'photo' ? (
        <PhotoForm shown={shown} known={known} notes={notes} />
      ) : (
        <MeasureForm key={method} method={method} shown={shown} known={known} notes={notes} />
      )}
      <MeasuredList shown={shown} known={known} notes={notes} />
    </section>
  );
}
