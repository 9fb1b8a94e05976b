/** Several cooks over one another: their lines, their differences, and why two of them differ. */
import { useState } from 'react';
import { Link, useSearch } from 'wouter';
import { Choice } from '../../../parts/Choice.tsx';
import { dayText } from '../../../parts/dayText.ts';
import { stepNames } from '../../../parts/stepNames.ts';
import { useTitle } from '../../../parts/useTitle.ts';
import { useBook } from '../list/useBook.ts';
import { Differences } from './Differences.tsx';
import { Explain } from './Explain.tsx';
import { OverPicture } from './OverPicture.tsx';
import { type Alignment, commonSteps, overlaidOf } from './overlaid.ts';
import { TheirLots } from './TheirLots.tsx';

export default function LayOver() {
  useTitle('Laid over one another · Book');
  const ids = (new URLSearchParams(useSearch()).get('cooks') ?? '').split(',').filter(Boolean);
  const { entries, isLoading } = useBook();
  const [wish, setWish] = useState<Alignment>('clock');
  const cooks = overlaidOf(entries, ids);
  const steps = commonSteps(cooks);
  const alignment = wish !== 'clock' && !steps.includes(wish) ? 'clock' : wish;
  return (
    <main id="main" className="book">
      <header className="book-head">
        <p>
          <Link href="/book" className="back">
            Book
          </Link>
        </p>
        <h1>Laid over one another</h1>
      </header>
      {cooks.length < 2 ? (
        <p role="status">{isLoading ? 'The Book is being opened.' : 'Tick two cooks or more in the Book first.'}</p>
      ) : (
        <>
          <ol className="over-legend">
            {cooks.map(({ id, name, begun, rehearsed }) => (
              <li key={id}>
                <Link href={`/book/${id}`}>{name}</Link>{' '}
                <span className="small quiet">
                  {rehearsed && <strong className="rehearsed">Rehearsal</strong>} {dayText(begun)}
                </span>
              </li>
            ))}
          </ol>
          <div className="explain-choices">
            <Choice
              label="Aligned by"
              value={alignment}
              options={[
                ['clock', 'The cold pan'],
                ...steps.slice(1).map((kind) => [kind, `Start of ${stepNames[kind].toLowerCase()}`] as const),
              ]}
              onChoose={setWish}
            />
          </div>
          <OverPicture cooks={cooks} alignment={alignment} />
          <Differences cooks={cooks} />
          <TheirLots cooks={cooks} />
          <Explain key={cooks.map(({ id }) => id).join(' ')} cooks={cooks} />
        </>
      )}
    </main>
  );
}
