/** One lot: what it is, what is known of it, and what can be done with it. */
import { Link } from 'wouter';
import { dayText } from '../../parts/dayText.ts';
import { Unreached } from '../../parts/Unreached.tsx';
import { useTitle } from '../../parts/useTitle.ts';
import { reachOf } from '../../records/reach.ts';
import { useLot } from '../../records/useLots.ts';
import { Vessel } from './drawn/Vessel.tsx';
import { Figures } from './Figures.tsx';
import { Keep } from './keep/Keep.tsx';
import { LetDownSection } from './keep/LetDownSection.tsx';
import { LotActs } from './LotActs.tsx';
import { Measure } from './measure/Measure.tsx';
import { StockSection } from './StockSection.tsx';
import { ageOf, formWords, massWords, originWords, type Shown, shareLeft, shownOf, toneOf } from './shown.ts';
import { Taste } from './taste/Taste.tsx';
import { useNotes } from './useNotes.tsx';

export function LotPage({ id }: { readonly id: string }) {
  const { data, error, isPending } = useLot(id);
  useTitle(data ? `${data.lot.name} · Shelf` : 'Shelf');
  if (data) return <LotShown shown={shownOf(data)} />;
  return (
    <main id="main" className="shelf">
      <p role="status">{!isPending && <WhyNot error={error} />}</p>
      <p>
        <Link href="/shelf">To the shelf</Link>
      </p>
    </main>
  );
}

const parts = [
  { to: 'lot-stock', name: 'Stock' },
  { to: 'lot-measure', name: 'Measure' },
  { to: 'lot-taste', name: 'Taste' },
  { to: 'lot-keep', name: 'Keep' },
  { to: 'lot-let-down', name: 'Let down' },
] as const;

function WhyNot({ error }: { readonly error: unknown }) {
  const reach = reachOf(error);
  if (reach !== 'reached') return <Unreached reach={reach} so="the lot can’t be seen now." />;
  return <>There is no such lot on this server. It may be on another one, or the address is incomplete.</>;
}

function LotShown({ shown }: { readonly shown: Shown }) {
  const { lot, known, removed } = shown;
  const notes = useNotes(shown.id);
  return (
    <main id="main" className="shelf lot" data-origin={lot.origin}>
      <header className="lot-head">
        <Link href="/shelf" className="back">
          Shelf
        </Link>
        <div className="lot-picture">
          <Vessel form={lot.form} tone={toneOf(known)} left={shareLeft(known)} tag="" />
          <span className="board" aria-hidden="true" />
        </div>
        <div className="lot-title">
          <h1>{lot.name}</h1>
          <p className="lot-stock">
            <span className="figure">{massWords(known.stock.kg)}</span>{' '}
            {known.stock.usedUp ? 'left: used up' : `left of ${massWords(known.madeKg.mid)}`}
          </p>
          <p className="quiet">
            {formWords[lot.form]}, {originWords[lot.origin]}, {dayText(lot.madeAt)}, {ageOf(lot.madeAt, new Date())}
          </p>
          {lot.origin === 'rehearsed' && (
            <p className="rehearsed-note">A rehearsal: poured from a simulated pan. There is nothing in this jar.</p>
          )}
          {removed !== null && <p role="alert">It was taken off the shelf on {dayText(removed)}.</p>}
          <LotActs shown={shown} />
        </div>
      </header>
      <nav className="lot-parts-nav" aria-label="Parts of this lot">
        {parts.map(({ to, name }) => (
          <a key={to} href={`#${to}`}>
            {name}
          </a>
        ))}
      </nav>
      {notes.said}
      <div className="lot-parts">
        <Figures shown={shown} />
        <StockSection shown={shown} notes={notes} />
        <Measure shown={shown} notes={notes} />
        <Taste shown={shown} notes={notes} />
        <Keep shown={shown} />
        <LetDownSection shown={shown} />
      </div>
    </main>
  );
}
