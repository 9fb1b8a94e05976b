/** What a check found, with ranges, and what it would change; kept only when the person says so. */
import { useDeferredValue, useMemo } from 'react';
import { Link } from 'wouter';
import { changesBy } from '../../../../core/learn/changes.ts';
import { type CheckEntry, type Checked, checkKit } from '../../../../core/learn/checks/check.ts';
import { foundLines } from '../../../../core/learn/checks/foundWords.ts';
import type { Kit } from '../../../../core/pan/kit.ts';
import { ChangesTable } from '../KnownTable.tsx';
import { type KitHand, useKeeping } from '../useKitInHand.ts';

interface OutcomeProps {
  readonly hand: KitHand;
  /** Nothing before there is enough to go by. */
  readonly entry: CheckEntry | undefined;
  /** What is still wanted, until then. */
  readonly wants: string;
  /** What was read is done with. */
  readonly onKept: () => void;
}

type Tried = { readonly checked: Checked } | { readonly trouble: string };

export function Outcome({ hand, entry, wants, onKept }: OutcomeProps) {
  const kit = hand.record?.kit;
  const asked = useDeferredValue(entry);
  const tried = useMemo(() => (kit && asked ? attempt(kit, asked) : undefined), [kit, asked]);
  const { state, message, keep } = useKeeping(hand);
  const kept = state === 'kept';
  return (
    <section className="outcome" aria-labelledby="outcome">
      <h2 id="outcome">What it says</h2>
      {!tried && !kept && <p className="quiet">{wants}</p>}
      {tried && 'trouble' in tried && (
        <p className="kit-note" role="alert">
          This can’t be: {tried.trouble}
        </p>
      )}
      {kit && tried && 'checked' in tried && (
        <>
          <dl className="found" aria-live="polite">
            {foundLines(tried.checked.found).map(({ label, value, range }) => (
              <div key={label}>
                <dt>{label}</dt>
                <dd>
                  <span className="found-value">{value}</span> {range && <span className="small quiet">{range}</span>}
                </dd>
              </div>
            ))}
          </dl>
          <ChangesTable
            caption="What it would change"
            note="10-90 % ranges, before and after; nothing is kept yet"
            changes={changesBy(kit, tried.checked.learned).filter(({ narrowing }) => narrowing < 0.98)}
          />
          <div className="buttons">
            <button
              type="button"
              className="main"
              disabled={state === 'busy' || hand.reach !== 'reached'}
              onClick={() => keepNow(kit, tried.checked)}
            >
              Keep this check
            </button>
          </div>
        </>
      )}
      <p role="status">
        {message} {kept && hand.record && <Link href={`/kit/${hand.record.id}`}>To the kit</Link>}
      </p>
    </section>
  );

  function keepNow(now: Kit, { learned }: Checked) {
    keep({ ...now, learned }, 'Kept: plans reckon with it from now on.', onKept);
  }
}

function attempt(kit: Kit, entry: CheckEntry): Tried {
  try {
    return { checked: checkKit(kit, entry, new Date().toISOString()) };
  } catch (error) {
    if (error instanceof RangeError) return { trouble: error.message };
    throw error;
  }
}
