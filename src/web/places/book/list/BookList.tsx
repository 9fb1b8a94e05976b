/** All cooks and rehearsals, newest first. */
import { useState } from 'react';
import { Link } from 'wouter';
import { Unreached } from '../../../parts/Unreached.tsx';
import { useTitle } from '../../../parts/useTitle.ts';
import '../../../parts/field.css';
import { LikedBest } from '../liked/LikedBest.tsx';
import { useLiked } from '../liked/useLiked.ts';
import { CookRow } from './CookRow.tsx';
import { found, type Order, ordered, type ShownKind } from './search.ts';
import { TakeIn } from './TakeIn.tsx';
import { useBook } from './useBook.ts';
import { Workspace } from './Workspace.tsx';

const kinds: readonly (readonly [ShownKind, string])[] = [
  ['all', 'All'],
  ['live', 'Cooks'],
  ['rehearsal', 'Rehearsals'],
];
const orderNames: readonly (readonly [Order, string])[] = [
  ['newest', 'Newest first'],
  ['liked', 'Liked best first'],
];
/** More lines over one another nobody could tell apart. */
const mostOver = 10;

export function BookList() {
  useTitle('Book');
  const { entries, isLoading, reach } = useBook();
  const [words, setWords] = useState('');
  const [kind, setKind] = useState<ShownKind>('all');
  const [picked, setPicked] = useState<readonly string[]>([]);
  const [order, setOrder] = useState<Order>('newest');
  const liked = useLiked();
  const listed = ordered(found(entries, words, kind), order, liked.of);
  const nameOf = (cookId: string) =>
    entries.find(({ cook }) => cook.id === cookId)?.cook.name ?? 'a cook not listed here';
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
        <Radios legend="Show" name="book-kind" options={kinds} value={kind} onChoose={setKind} />
        {liked.cooks.length > 0 && (
          <Radios legend="Order" name="book-order" options={orderNames} value={order} onChoose={setOrder} />
        )}
      </search>
      {reach !== 'reached' && (
        <p role="status">
          <Unreached reach={reach} so="only what this device holds is listed." />
        </p>
      )}
      <p className="small quiet" role="status">
        {isLoading ? 'The Book is being opened.' : countText(listed.length, entries.length)}
      </p>
      {!isLoading && entries.length === 0 && (
        <p>
          Nothing has been cooked yet. <Link href="/">Plan a sugar at the Desk</Link>, then rehearse or cook it. To look
          round first: <Link href="/demo">a club’s kitchen</Link>.
        </p>
      )}
      <ol className="cook-list">
        {listed.map((entry) => (
          <CookRow
            key={entry.cook.id}
            entry={entry}
            liked={liked.of(entry.cook.id)}
            picked={picked.includes(entry.cook.id)}
            onPick={(on) => pick(entry.cook.id, on)}
          />
        ))}
      </ol>
      <LikedBest cooks={liked.cooks} nameOf={nameOf} />
      <TakeIn nameOf={nameOf} />
      <Workspace />
      {picked.length > 0 && <Picked ids={picked} onClear={() => setPicked([])} />}
    </main>
  );
}

interface RadiosProps<T extends string> {
  readonly legend: string;
  readonly name: string;
  readonly options: readonly (readonly [T, string])[];
  readonly value: T;
  readonly onChoose: (value: T) => void;
}

function Radios<T extends string>({ legend, name, options, value, onChoose }: RadiosProps<T>) {
  return (
    <fieldset className="book-kinds">
      <legend>{legend}</legend>
      {options.map(([option, text]) => (
        <label key={option}>
          <input type="radio" name={name} checked={value === option} onChange={() => onChoose(option)} />
          {text}
        </label>
      ))}
    </fieldset>
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
