/** One cook looked back at. All of this page is a replay, and says so on every view of it. */
import { useState } from 'react';
import { Link } from 'wouter';
import type { Hindsight } from '../../../../core/book/hindsight.ts';
import { a430FromEbc } from '../../../../core/colour/scales.ts';
import { dayText } from '../../../parts/dayText.ts';
import { ebcOf } from '../../../parts/figures.ts';
import { Unreached } from '../../../parts/Unreached.tsx';
import { useTitle } from '../../../parts/useTitle.ts';
import { reachOf } from '../../../records/reach.ts';
import { AlarmReportView } from '../../stove/alarms/AlarmReportView.tsx';
import { SurprisesTold } from '../../stove/rehearsal/SurprisesTold.tsx';
import type { LookedBack } from '../book.worker.ts';
import { LikedHere } from '../liked/LikedHere.tsx';
import { Progress } from '../Progress.tsx';
import { type Answer, useAsked } from '../useAsked.ts';
import { Beside } from './Beside.tsx';
import { CookPicture } from './CookPicture.tsx';
import { DoseTable } from './DoseTable.tsx';
import { LogTable } from './LogTable.tsx';
import { MomentTable } from './MomentTable.tsx';
import { PassOn } from './PassOn.tsx';
import { ReplayControls } from './ReplayControls.tsx';
import { type Cooked, rowsOf, useCook } from './useCook.ts';
import { useReplay } from './useReplay.ts';

export default function CookPage({ id }: { readonly id: string }) {
  const { cooked, looked, error } = useCook(id);
  const reach = reachOf(error);
  useTitle(cooked ? `${cooked.name} · Book` : 'Book');
  return (
    <main id="main" className="book">
      {cooked ? (
        <Looked cooked={cooked} looked={looked} />
      ) : (
        <>
          <h1>{error ? 'Not in the Book' : 'The log is being read'}</h1>
          {error && (
            <p role="alert">
              {reach === 'reached' ? (
                'There is no cook at this address.'
              ) : (
                <Unreached reach={reach} so="and this device holds nothing of this cook." />
              )}
            </p>
          )}
          <p>
            <Link href="/book">To the Book</Link>
          </p>
        </>
      )}
    </main>
  );
}

interface LookedProps {
  readonly cooked: Cooked;
  readonly looked: Answer<LookedBack | undefined>;
}

function Looked({ cooked, looked }: LookedProps) {
  const { id, name, events, state, doings } = cooked;
  const rehearsed = state.mode === 'rehearsal';
  const withSurprises = state.begun?.body.rehearsal?.surprises === true;
  const replay = useReplay(doings.endS);
  const [wantsKnown, setWantsKnown] = useState(false);
  const key = `${id} ${events.length}`;
  const known = useAsked(
    wantsKnown ? key : undefined,
    (book, onPart) => book.hindsight(events, onPart) as Promise<Hindsight | undefined>,
  );
  const isLooked = looked.kind === 'done';
  const alarms = useAsked(isLooked ? key : undefined, (book, onPart) => book.alarms(events, onPart));
  const { history, surprises } = alarms.kind === 'done' ? alarms.value : { history: [], surprises: undefined };
  const rows = rowsOf(looked);
  const hindsight = known.kind === 'done' && known.value?.kind === 'known' ? known.value.rows : undefined;
  const landed = isLooked ? looked.value?.landed : undefined;
  return (
    <>
      <div className="replay-edge" aria-hidden="true" />
      <header className="replay-strip">
        <p className="mode" data-role="mode">
          {rehearsed ? `Replay of a rehearsal${withSurprises ? ' with surprises' : ''}` : 'Replay'}
        </p>
        <h1>{name}</h1>
        <p className="small quiet">
          {state.startMs !== null && dayText(new Date(state.startMs).toISOString())}
          {landed && `, landed at ${ebcOf(a430FromEbc(landed.ebc.mid))} EBC`}
        </p>
      </header>
      <Beside cooked={cooked} />
      <LikedHere cookId={id} />
      <Progress answer={looked} what="The twin is led through the log" />
      {!state.begun && <p role="alert">This log does not say how the cook began, so it can’t be drawn.</p>}
      <figure className="cook-figure">
        <CookPicture cooked={cooked} rows={rows} hindsight={hindsight} alarms={history} atS={replay.atS} />
        <figcaption className="small quiet">
          Dots: readings. Line with grey band: what the twin believed then, 8 in 10. Diamonds: spoon tests. Triangles:
          an alarm sounded. {hindsight && 'Dotted, and outlined below: as it is known now.'}
        </figcaption>
      </figure>
      <ReplayControls replay={replay} endS={doings.endS} />
      <div className="moment-part">
        <MomentTable rows={rows} hindsight={hindsight} atS={replay.atS} />
        {known.kind === 'none' && (
          <p>
            <button type="button" onClick={() => setWantsKnown(true)}>
              Work out what is known now
            </button>{' '}
            <span className="small quiet">Fits kitchen and spoons to the whole log. It takes half a minute or so.</span>
          </p>
        )}
        {known.kind === 'working' && (
          <p>
            <Progress answer={known} what="The whole log is fitted" />
            <button type="button" onClick={() => setWantsKnown(false)}>
              Stop
            </button>
          </p>
        )}
        {known.kind === 'failed' && <p role="alert">It could not be worked out: {known.message}</p>}
        {known.kind === 'done' && known.value?.kind === 'untold' && (
          <p role="status">
            No kitchen that was likely tells this log: readings stay {known.value.readingsOffC.toFixed(1)} K off. So
            nothing more is known now than then.
          </p>
        )}
      </div>
      <DoseTable doings={doings} />
      <Progress answer={alarms} what="Alarms are judged again" />
      {surprises && <SurprisesTold surprises={surprises} heading="h2" />}
      {alarms.kind === 'done' && <AlarmReportView history={history} untilS={doings.endS} />}
      <LogTable cooked={cooked} />
      <PassOn cooked={cooked} looked={isLooked ? looked.value : undefined} />
    </>
  );
}
