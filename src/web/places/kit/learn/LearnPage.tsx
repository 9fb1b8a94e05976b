/** Learning from a cook: which one, what the fit says of it, what it changes; kept only when the person says so. */
import { Link } from 'wouter';
import { dayText } from '../../../parts/dayText.ts';
import { useTitle } from '../../../parts/useTitle.ts';
import { type CookListed, useKeptCooks } from '../useKeptCooks.ts';
import type { KitHand } from '../useKitInHand.ts';
import { LessonView } from './LessonView.tsx';

interface LearnPageProps {
  readonly hand: KitHand;
  readonly cookId: string | undefined;
}

export function LearnPage({ hand, cookId }: LearnPageProps) {
  const { record } = hand;
  const { cooks, isPending } = useKeptCooks();
  const cook = cooks.find(({ id }) => id === cookId);
  useTitle(`Learn · ${record?.kit.name ?? 'Kit'}`);
  return (
    <main id="main" className="kit learn">
      <header className="kit-head">
        <p>
          {record && (
            <Link href={`/kit/${record.id}`} className="back">
              {record.kit.name}
            </Link>
          )}
        </p>
        <h1>{cook ? `Learn from ${cook.name}` : 'Learn from a cook'}</h1>
        {cook && (
          <p className="quiet">
            {dayText(cook.beganAt)}
            {cook.where === 'device' && ', on this device alone'}
          </p>
        )}
      </header>
      {!record && <p>Save the kit first.</p>}
      {record && cook && <LessonView hand={hand} kit={record.kit} cook={cook} />}
      {record && !cook && (
        <CookChoice
          cooks={cooks}
          isPending={isPending}
          kitId={record.id}
          learned={record.kit.learned?.lessons.map(({ name }) => name) ?? []}
          missing={cookId !== undefined}
        />
      )}
    </main>
  );
}

interface CookChoiceProps {
  readonly cooks: readonly CookListed[];
  readonly isPending: boolean;
  readonly kitId: string;
  /** Ids of those that were learned from. */
  readonly learned: readonly string[];
  readonly missing: boolean;
}

function CookChoice({ cooks, isPending, kitId, learned, missing }: CookChoiceProps) {
  if (isPending) return <p role="status">Looking for cooks …</p>;
  return (
    <section aria-labelledby="which-cook">
      <h2 id="which-cook">Which cook?</h2>
      {missing && <p className="kit-note">That cook is not here.</p>}
      {cooks.length === 0 && (
        <p className="quiet">
          There is no cook yet. A finished cook has its dial settings noted and a reading at least every ten minutes.
          One that was written down elsewhere can be <Link href={`/kit/${kitId}/import`}>imported</Link>.
        </p>
      )}
      <ul className="cook-list">
        {cooks.map((cook) => {
          const { id, name, beganAt } = cook;
          return (
            <li key={id}>
              <Link href={`/kit/${kitId}/learn/${id}`}>
                <strong>{name}</strong>
                <span className="small quiet">{dayText(beganAt)}</span>
                <span className="small">{learned.includes(id) ? '✓ learned from' : stateOf(cook)}</span>
              </Link>
            </li>
          );
        })}
      </ul>
    </section>
  );
}

function stateOf({ mode, ended }: CookListed): string {
  if (mode === 'rehearsal') return 'rehearsal: to try it only';
  return ended === null ? 'not ended yet' : 'not yet';
}
