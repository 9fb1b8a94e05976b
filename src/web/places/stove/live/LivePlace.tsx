/** A real cook, followed by its log: on this device alone or with others, with the server or without. */
import { lazy, Suspense, useEffect, useSyncExternalStore } from 'react';
import { Link } from 'wouter';
import { alkaliOfCook } from '../../../../core/lot/alkaliOfCook.ts';
import type { Plan } from '../../../../core/planning/plan.ts';
import { clock } from '../../../parts/figures.ts';
import { useTitle } from '../../../parts/useTitle.ts';
import type { LinkState } from '../../../records/cookLog/following.ts';
import { useLooksOn } from '../../../records/useStanding.ts';
import { ActsProvider } from '../acts.ts';
import { AlarmReportView } from '../alarms/AlarmReportView.tsx';
import { CookLine } from '../CookLine.tsx';
import { CookView } from '../CookView.tsx';
import { cookIn } from '../cooked.ts';
import { FoamButton } from '../FoamButton.tsx';
import { LogBook } from '../LogBook.tsx';
import { linkWords, modeWords } from './liveWords.ts';
import { Measure } from './Measure.tsx';
import { OtherDeeds } from './OtherDeeds.tsx';
import { acts, type Live, liveNow, lookingOn, openLive, subscribe, takeOver } from './session.ts';
import { Thermometer } from './Thermometer.tsx';

const SetAndBreak = lazy(async () => ({ default: (await import('../setting/SetAndBreak.tsx')).SetAndBreak }));

export function LivePlace({ id }: { readonly id: string }) {
  const live = useSyncExternalStore(subscribe, liveNow);
  useEffect(() => void openLive(id), [id]);
  const looksOn = useLooksOn();
  const mine = live?.id === id ? live : undefined;
  useTitle(mine?.cooked ? `${mine.cooked.planned.name} · Stove` : 'A cook · Stove');
  return (
    <ActsProvider value={looksOn ? lookingOn : acts}>
      <main id="main" className="stove live">
        <Strip live={mine} looksOn={looksOn} />
        {mine?.writer === 'elsewhere' && (
          <p className="notice" role="status">
            This cook is written in another tab of this device: here it can only be watched.{' '}
            <button type="button" onClick={takeOver}>
              Write here instead
            </button>
          </p>
        )}
        {mine?.failed !== undefined && <p role="alert">This could not be computed: {mine.failed}</p>}
        {mine && !mine.cooked && mine.failed === undefined && <Waiting live={mine} />}
        {mine?.cooked && <Cooking live={mine} looksOn={looksOn} />}
      </main>
    </ActsProvider>
  );
}

function Strip({ live, looksOn }: { readonly live: Live | undefined; readonly looksOn: boolean }) {
  const { cooked, link } = live ?? {};
  return (
    <header className="strip">
      <div>
        <h1>{cooked?.planned.name ?? 'A cook'}</h1>
        <p className="small">
          <span data-role="mode">{cooked ? modeWords(cooked.view) : 'Opening'}</span>
          {'. '}
          <span data-role="link" data-state={link?.state}>
            {link && linkWords(link, live?.openForS ?? 0)}
          </span>
          {link?.state === 'not let in' && (
            <>
              {'. '}
              <Link href="/pair">Pair it</Link>
            </>
          )}
        </p>
      </div>
      <div className="strip-acts">
        {cooked && !cooked.view.poured && !looksOn && <FoamButton begun={cooked.view.begun} />}
        <Link className="button first-aid" href="/care">
          First aid
        </Link>
      </div>
    </header>
  );
}

function Waiting({ live }: { readonly live: Live }) {
  return (
    <div className="preparing">
      <p role="status">{waitingWords(live.link?.state)}</p>
      <p>
        <Link href="/stove/cook">To the cooks</Link>
      </p>
    </div>
  );
}

function waitingWords(state: LinkState | undefined): string {
  if (state === 'live') return 'The log is here; the twin catches up with it.';
  if (state === 'unknown') return 'There is no cook at this address, neither on the server nor on this device.';
  return 'Waiting for the log of this cook.';
}

function Cooking({ live, looksOn }: { readonly live: Live; readonly looksOn: boolean }) {
  const { id, cooked, link } = live;
  if (!cooked) return null;
  const { view, planned, entries } = cooked;
  const { begun } = planned;
  if (!view.poured) {
    return (
      <CookView
        cooked={cooked}
        below={<Thermometer view={view} cookId={id} />}
        beside={
          <>
            <OtherDeeds view={view} cook={cookIn(cooked)} />
            <Measure tareKg={begun.kit.pan.massKg} />
          </>
        }
        ending={
          <>
            <ShowGuest id={id} />
            <GiveUp ended={live.ended} />
          </>
        }
      />
    );
  }
  const poured = entries.find(({ kind }) => kind === 'poured');
  return (
    <>
      <div className="cooking">
        <p>Poured after {clock(view.poured.atS / 60)}.</p>
        {link && link.waiting > 0 && link.state !== 'live' && (
          <p className="notice" role="status">
            The end of this cook is on this device alone. To be safe, <a href="#log-book">save the log as a file</a>.
          </p>
        )}
        {poured && !looksOn && (
          <Suspense>
            <SetAndBreak
              poured={view.poured.sugar}
              pouredMs={poured.trueMs}
              plan={{ request: begun.request as Plan['request'] }}
              kit={begun.kit}
              planId={begun.planId}
              cookId={id}
              origin={begun.mode === 'live' ? 'cooked' : 'rehearsed'}
              alkali={alkaliOfCook(begun, entries)}
              made={live.ended}
              onLotMade={() => !live.ended && acts.say('ended', { how: 'done' })}
            />
          </Suspense>
        )}
      </div>
      <div className="watching">
        <CookLine cooked={cooked} />
        <AlarmReportView history={view.alarms.history} untilS={view.poured.atS} />
        <LogBook entries={entries} cook={cookIn(cooked)} />
      </div>
    </>
  );
}

function ShowGuest({ id }: { readonly id: string }) {
  return (
    <p>
      <Link className="button" href={`/devices?share=${id}`}>
        Show this cook to a guest
      </Link>
    </p>
  );
}

function GiveUp({ ended }: { readonly ended: boolean }) {
  if (ended) return <p>This cook was ended. What is noted now still goes into its log.</p>;
  return (
    <details className="give-up">
      <summary>Give this cook up</summary>
      <p>Heat off first. The log is kept.</p>
      <button type="button" onClick={() => acts.say('ended', { how: 'abandoned' })}>
        Give it up
      </button>
    </details>
  );
}
