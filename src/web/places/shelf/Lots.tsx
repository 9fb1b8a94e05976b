/** All lots on their boards: real ones, those used up, and those that were only rehearsed. */
import { Link } from 'wouter';
import { keepingOf } from '../../../core/lot/keep/keeping.ts';
import { shortDayText } from '../../parts/dayText.ts';
import { ebcOf } from '../../parts/figures.ts';
import { Unreached } from '../../parts/Unreached.tsx';
import { useTitle } from '../../parts/useTitle.ts';
import { reachOf } from '../../records/reach.ts';
import { useLots } from '../../records/useLots.ts';
import { useWaitingLots } from '../stove/setting/waitingLots.ts';
import { Vessel } from './drawn/Vessel.tsx';
import { standingWords } from './keep/keepWords.ts';
import { useRoom } from './keep/room.ts';
import { ageOf, massWords, type Shown, shareLeft, shownOf, toneOf } from './shown.ts';

export function Lots() {
  const { data, error, isPending } = useLots();
  const reach = reachOf(error);
  const { waiting } = useWaitingLots();
  useTitle('Shelf');
  const lots = (data ?? []).map(shownOf);
  const real = lots.filter(({ lot }) => lot.origin !== 'rehearsed');
  const here = real.filter(({ known }) => !known.stock.usedUp);
  const gone = real.filter(({ known }) => known.stock.usedUp);
  const rehearsed = lots.filter(({ lot }) => lot.origin === 'rehearsed');
  return (
    <main id="main" className="shelf">
      <header className="shelf-head">
        <h1>Shelf</h1>
        <nav aria-label="On the Shelf" className="shelf-acts">
          <Link className="button" href="/shelf/new">
            Write in a sugar
          </Link>
          {here.length > 1 && (
            <Link className="button" href="/shelf/blind">
              Taste blind
            </Link>
          )}
          {lots.length > 1 && (
            <Link className="button" href="/shelf/compare">
              Side by side
            </Link>
          )}
        </nav>
      </header>
      <div role="status">
        {reach !== 'reached' && (
          <p>
            <Unreached reach={reach} so="the shelf can’t be seen now." />
          </p>
        )}
        {waiting.map(({ id, lot, refused }) => (
          <p key={id}>
            “{lot.name}” is kept on this device and{' '}
            {refused ? 'was refused by the server.' : 'is on its way to the server.'}
          </p>
        ))}
      </div>
      {!isPending && !error && here.length === 0 && <Bare />}
      <Boards lots={here} />
      {gone.length > 0 && (
        <details>
          <summary>Used up ({gone.length})</summary>
          <Boards lots={gone} />
        </details>
      )}
      {rehearsed.length > 0 && (
        <section className="rehearsed" aria-labelledby="shelf-rehearsed">
          <h2 id="shelf-rehearsed">From rehearsals</h2>
          <p className="small">Poured from a simulated pan: there is nothing to weigh, and nothing to eat.</p>
          <Boards lots={rehearsed} />
        </section>
      )}
      {lots.length > 0 && (
        <p className="small quiet">
          Drawn in their computed colours, as layers of 1 to 3 mm over white: more of it would look darker.
        </p>
      )}
    </main>
  );
}

function Bare() {
  return (
    <div className="bare">
      <ul className="boards" aria-hidden="true">
        <li />
      </ul>
      <p>
        Nothing on it yet. A cook at the <Link href="/stove">Stove</Link> ends in a lot; a sugar that was made before
        can be <Link href="/shelf/new">written in</Link>. To look round first:{' '}
        <Link href="/demo">a club’s kitchen</Link>.
      </p>
    </div>
  );
}

function Boards({ lots }: { readonly lots: readonly Shown[] }) {
  const room = useRoom();
  const now = new Date();
  return (
    <ul className="boards">
      {lots.map(({ id, lot, known }) => (
        <li key={id}>
          <Link href={`/shelf/${id}`}>
            <Vessel
              form={lot.form}
              tone={toneOf(known)}
              left={shareLeft(known)}
              tag={shortDayText(lot.madeAt, { year: false })}
            />
            <span className="board" aria-hidden="true" />
            <strong>{lot.name}</strong>
            <span className="small">
              {massWords(known.stock.kg)} · {ebcOf(known.figures.a430.mid)} EBC
            </span>
            <span className="small quiet">
              {ageOf(lot.madeAt, now)}; {standingWords[keepingOf(known.figures, room).standing]}
            </span>
          </Link>
        </li>
      ))}
    </ul>
  );
}
