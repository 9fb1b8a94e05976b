/** One lesson: begin, progress and a way out, then the verdict, shown before anything is kept. */
import { Link } from 'wouter';
import { faultText } from '../../../../core/learn/words.ts';
import { taughtByLots } from '../../../../core/lot/taughtByLots.ts';
import type { Kit } from '../../../../core/pan/kit.ts';
import { useLots } from '../../../records/useLots.ts';
import type { CookListed } from '../useKeptCooks.ts';
import { type KitHand, useKeeping } from '../useKitInHand.ts';
import type { Lesson } from './lesson.worker.ts';
import { Taught } from './Taught.tsx';
import { useLesson } from './useLesson.ts';

interface LessonViewProps {
  readonly hand: KitHand;
  readonly kit: Kit;
  readonly cook: CookListed;
}

/** A fit takes about so many runs of the model (measured over 30 cooks: 900 to 2500). */
const usualRuns = 1800;

export function LessonView({ hand, kit, cook }: LessonViewProps) {
  const lots = useLots();
  const made = lots.data?.filter(({ lot }) => lot.cookId === cook.id) ?? [];
  const measured = taughtByLots(made.map(({ lot, notes }) => ({ lot, notes: notes.map(({ note }) => note) })));
  const rehearsed = cook.mode === 'rehearsal';
  const { state, start, cancel } = useLesson();
  const keeping = useKeeping(hand);
  const kept = keeping.state === 'kept';
  if (kept) return <Kept hand={hand} message={keeping.message} />;
  return (
    <section className="lesson" aria-live="polite">
      {state.kind === 'idle' && (
        <>
          <p>
            Every number of the kitchen is fitted to all readings and deeds of this cook
            {measured.length > 0 && ` and to ${measured.length} measurements of its sugar`}. It takes some seconds.
            Nothing is kept before you have seen what it says.
          </p>
          {rehearsed && (
            <p className="kit-note">
              This was a rehearsal: no real stove is behind it. You can look at what it would teach, but it can’t be
              kept.
            </p>
          )}
          <button
            type="button"
            className="main big"
            onClick={() => void start({ cook: cook.id, kit, measured, rehearsed })}
          >
            Look what it teaches
          </button>
        </>
      )}
      {state.kind === 'running' && (
        <div className="running">
          <progress max={1} value={Math.min(0.97, state.runs / usualRuns)} aria-label="How far the fit is" />
          <p>The pan was cooked {state.runs.toLocaleString()} times over, with other numbers each time.</p>
          <button type="button" onClick={cancel}>
            Stop
          </button>
        </div>
      )}
      {state.kind === 'failed' && (
        <p className="kit-note" role="alert">
          It could not be learned from: {state.message}
        </p>
      )}
      {state.kind === 'done' && <Verdict lesson={state.lesson} />}
      {state.kind === 'done' && state.lesson.learning.kind !== 'unfit' && (
        <Taught lesson={state.lesson} learning={state.lesson.learning} next={state.next} />
      )}
      {state.kind === 'done' && state.lesson.learning.kind === 'learned' && (
        <div className="buttons">
          <button
            type="button"
            className="main big"
            disabled={rehearsed || hand.reach !== 'reached' || keeping.state === 'busy'}
            onClick={() => keep(state.lesson)}
          >
            Keep what it taught
          </button>
          <Link className="button" href={`/kit/${hand.record?.id}/learn`}>
            Leave it
          </Link>
        </div>
      )}
      <p role="status">{keeping.message}</p>
    </section>
  );

  function keep({ learning }: Lesson) {
    if (learning.kind !== 'learned') return;
    keeping.keep({ ...kit, learned: learning.learned }, 'Kept: the next plan is made for this kitchen.');
  }
}

function Kept({ hand, message }: { readonly hand: KitHand; readonly message: string | undefined }) {
  return (
    <section className="lesson">
      <p role="status">{message}</p>
      <div className="buttons">
        <Link className="button" href={`/kit/${hand.record?.id}`}>
          To the kit
        </Link>
        <Link className="button" href="/">
          To the Desk
        </Link>
      </div>
    </section>
  );
}

function Verdict({ lesson: { learning, tookMs } }: { readonly lesson: Lesson }) {
  if (learning.kind === 'unfit') {
    return (
      <div className="kit-note" role="alert">
        <h2>Nothing can be learned from this log</h2>
        <ul>
          {learning.faults.map((fault) => (
            <li key={fault.kind}>{faultText(fault)}</li>
          ))}
        </ul>
      </div>
    );
  }
  const { misfit, mostMisfit, readingsOffC, shift, shiftLimit } = learning.verdict;
  const fits = misfit <= mostMisfit;
  const near = shift <= shiftLimit;
  return (
    <div className={learning.kind === 'learned' ? 'verdict' : 'kit-note'}>
      <h2>{learning.kind === 'learned' ? '✓ This cook can be told' : '✗ No kit that was likely tells this cook'}</h2>
      <p>
        {fits ? '✓' : '✗'} Its readings are told to within {readingsOffC.toFixed(1)} °C (misfit {misfit.toFixed(2)},
        allowed {mostMisfit}). {near ? '✓' : '✗'} The kitchen moved by {shift.toFixed(0)} (one cook in a thousand moves
        it by more than {shiftLimit.toFixed(0)}).
      </p>
      {learning.kind === 'refused' && (
        <p>
          It is not learned from: something is not as the log says. A setting not noted, water not noted, another pan,
          or a thermometer that was off would all do this.
        </p>
      )}
      <p className="small quiet">It took {(tookMs / 1000).toFixed(1)} s.</p>
    </div>
  );
}
