/** What there is of a lot: taking out, adding, counting on the scale, and what was taken before. */
import { useState } from 'react';
import { lotMassKg } from '../../../core/lot/lot.ts';
import { longestWhy, type Stocked } from '../../../core/lot/note.ts';
import { Choice } from '../../parts/Choice.tsx';
import { dayText } from '../../parts/dayText.ts';
import { Field } from '../../parts/Field.tsx';
import { readWeight } from '../stove/setting/lotFields.ts';
import { massWords, type Shown } from './shown.ts';
import type { Notes } from './useNotes.tsx';

type How = Stocked['how'];
const ways: readonly (readonly [How, string])[] = [
  ['took', 'take out'],
  ['added', 'add'],
  ['counted', 'all that is there'],
];
const done: Readonly<Record<How, string>> = { took: 'taken out', added: 'added', counted: 'on the scale, in all' };

interface StockProps {
  readonly shown: Shown;
  readonly notes: Notes;
}

export function StockSection({ shown, notes }: StockProps) {
  const { known } = shown;
  const { stock } = known;
  const moves = shown.notes.filter(({ note }) => note.kind === 'stocked').toReversed();
  return (
    <section className="stock" aria-labelledby="lot-stock">
      <h2 id="lot-stock">Stock</h2>
      <p>
        <span className="figure">{massWords(stock.kg)}</span>
        <span className="small quiet"> ± {Math.ceil(1280 * stock.sd)} g</span>
      </p>
      <StockForm stockKg={stock.kg} notes={notes} />
      {moves.length > 0 && (
        <ul className="note-list">
          {moves.map((record) => {
            const { how, kg, why, at } = record.note as Stocked;
            return (
              <li key={record.id}>
                <span>
                  <strong>{massWords(kg)}</strong> {done[how]}
                  {why !== '' && `: ${why}`} <span className="small quiet">{dayText(at)}</span>
                </span>
                <button type="button" className="plain" onClick={() => notes.remove(record)}>
                  Take away<span className="unseen"> this entry of {massWords(kg)}</span>
                </button>
              </li>
            );
          })}
        </ul>
      )}
    </section>
  );
}

function StockForm({ stockKg, notes }: { readonly stockKg: number; readonly notes: Notes }) {
  const [how, setHow] = useState<How>('took');
  const [text, setText] = useState('');
  const [why, setWhy] = useState('');
  const read = readWeight(text);
  const kg = read.kind === 'weight' ? read.kg : undefined;
  const over = kg !== undefined && how === 'took' && kg > stockKg + 0.0005;
  const trouble = read.kind === 'wrong' ? read.trouble : over ? `more than there is: ${massWords(stockKg)}` : undefined;
  const can = kg !== undefined && !over && kg <= lotMassKg[1] && why.length <= longestWhy && !notes.busy;

  function note(what: Pick<Stocked, 'how' | 'kg' | 'why'>) {
    notes.keep({ kind: 'stocked', at: new Date().toISOString(), ...what }, () => {
      setText('');
      setWhy('');
    });
  }

  return (
    <form
      aria-label="Stock"
      className="shelf-fields"
      onSubmit={(event) => {
        event.preventDefault();
        if (can && kg !== undefined) note({ how, kg, why: why.trim() });
      }}
    >
      <Choice label="What" value={how} options={ways} onChoose={setHow} />
      <Field
        name="stock-weight"
        label="How much, in g"
        text={text}
        onText={setText}
        trouble={trouble}
        keyboard="decimal"
      />
      <Field name="stock-why" label="What for" text={why} onText={setWhy} />
      <div className="shelf-acts">
        <button type="submit" className="main" disabled={!can}>
          Note it
        </button>
        {stockKg > 0.001 && (
          <button type="button" disabled={notes.busy} onClick={() => note({ how: 'counted', kg: 0, why: 'used up' })}>
            Used up
          </button>
        )}
      </div>
    </form>
  );
}
