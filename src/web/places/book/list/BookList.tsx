/** All cooks and rehearsals, newest first. */
import { useState } from 'react';
import { Link } from 'wouter';
import { useTitle } from '../../../parts/useTitle.ts';
import '../../../parts/field.css';
import { CookRow } from './CookRow.tsx';
import { found, type ShownKind } from './search.ts';
import { useBook } from './useBook.ts';

const kinds: readonly (readonly [ShownKind, string])[] = [
  ['all', 'All'],
  ['live', 'Cooks'],
  ['rehearsal', 'Rehearsals'],
];
/** More lines over one another nobody could tell apart. */
const mostOver = 10;

export function BookList() {
  useTitle('Book');
  const { entries, isLoading, unreached } = useBook();
  const [words, setWords] = useState('');
  const [kind, setKind] = useState<ShownKind>('all');
  const [picked, setPicked] = useState<readonly string[]>([]);
  const listed = found(entries, words, kind);
  const pick = (id: string, on: boolean) =>
    setPicked(on ? [...picked, id].slice(-mostOver) : picked.filter((one) => one !== id));
  return (
    <main id="main" className="book">
      <header className="book-head">
        <h1>Book</h1>
        <p className="quiet">
          Every cook and rehearsal. Open one to replay it, or tick some to lay them over one another.
        </p>
      </header>
      <search className="book-search">
        <div className="field">
          <label htmlFor="book-words">Find by name or date</label>
          <input id="book-words" type="search" value={words} onChange={(event) => setWords(event.target.value)} />
        </div>
        <fieldset className="book-kinds">
          <legend>Show</legend>
          {kinds.map(([value, name]) => (
            <label key={value}>
              <input type="radio" name="book-kind" checked={kind === value} onChange={() => setKind(value)} />
              {name}
            </label>
          ))}
        </fieldset>
      </search>
      {unreached && <p role="status">The server is not reached: only what this device holds is listed.</p>}
      <p className="small quiet" role="status">
        {isLoading ? 'The Book is being opened.' : countText(listed.length, entries.length)}
      </p>
      {!isLoading && entries.length === 0 && (
        <p>
          Nothing has been cooked yet. <Link href="/">Plan a sugar at the Desk</Link>, then rehearse or cook it.
        </p>
      )}
      <ol className="cook-list">
        {listed.map((entry) => (
          <CookRow
            key={entry.cook.id}
            entry={entry}
            picked={picked.includes(entry.cook.id)}
            onPick={(on) => pick(entry.cook.id, on)}
          />
        ))}
      </ol>
      {entries.length > 0 && (
        <p className="book-foot">
          <a className="button" href="/api/workspace" download>
            Everything as one file
          </a>
          <span className="small quiet">
            All kits, plans, cooks, lots and glasses; <code>umberpan restore</code> takes it in again.
          </span>
        </p>
      )}
      {picked.length > 0 && <Picked ids={picked} onClear={() => setPicked([])} />}
    </main>
  );
}

function Picked({ ids, onClear }: { readonly ids: readonly string[]; readonly onClear: () => void }) {
  return (
    <div className="picked" role="status">
      <span>{ids.length === 1 ? 'One ticked; tick another' : `${ids.length} ticked`}</span>
      {ids.length > 1 && (
        <Link className="button main-act" href={`/book/over?cooks=${ids.join(',')}`}>
          Lay over one another
        </Link>
      )}
      <button type="button" className="plain" onClick={onClear}>
        Untick all
      </button>
    </div>
  );
}

function countText(listed: number, all: number): string {
  if (all === 0) return '';
  return listed === all ? `${all} ${all === 1 ? 'cook' : 'cooks'}` : `${listed} of ${all} cooks`;
}
