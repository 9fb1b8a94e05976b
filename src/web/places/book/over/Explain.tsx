/** Why two cooks differ: the model cooks both again with their differences exchanged. */
import { useQuery } from '@tanstack/react-query';
import { useState } from 'react';
import { type Explained, type OutcomeName, outcomeNames } from '../../../../core/book/explain.ts';
import { amountText, explanationText, outcomeWords } from '../../../../core/book/words.ts';
import { Choice } from '../../../parts/Choice.tsx';
import { readLog } from '../../../records/readLog.ts';
import { Progress } from '../Progress.tsx';
import { useAsked } from '../useAsked.ts';
import { ExplainPicture } from './ExplainPicture.tsx';
import type { Overlaid } from './overlaid.ts';

export function Explain({ cooks }: { readonly cooks: readonly Overlaid[] }) {
  const [pair, setPair] = useState<readonly [string, string]>([cooks[0]?.id ?? '', cooks[1]?.id ?? '']);
  const [asked, setAsked] = useState<string>();
  const [of, setOf] = useState<OutcomeName>('ebc');
  const key = pair.join(' ');
  const wanted = asked === key && pair[0] !== pair[1];
  const logs = useQuery({
    queryKey: ['logs', key],
    queryFn: () => Promise.all(pair.map(readLog)),
    enabled: wanted,
    staleTime: 60_000,
  });
  const [first, second] = logs.data ?? [];
  const answer = useAsked(
    wanted && first && second ? key : undefined,
    (book, onPart) => book.explain(first ?? [], second ?? [], onPart) as Promise<Explained | undefined>,
  );
  const options = cooks.map(({ id, name }, i) => [id, `${i + 1}. ${name}`] as const);
  const nameOf = (id: string) => {
    const at = cooks.findIndex((cook) => cook.id === id);
    return `“${cooks[at]?.name}” (${at + 1})`;
  };
  const [a, b] = pair.map((id) => cooks.find((cook) => cook.id === id));
  return (
    <section className="explain" aria-labelledby="explain">
      <h2 id="explain">Where a difference comes from</h2>
      <p className="quiet">
        The model cooks both again from their logs, with alkali, hold time, temperature, water, malt extract and kit
        exchanged in every combination, and tells what each adds.
      </p>
      <div className="explain-choices">
        {cooks.length > 2 && (
          <>
            <Choice label="From" value={pair[0]} options={options} onChoose={(id) => setPair([id, pair[1]])} />
            <Choice label="To" value={pair[1]} options={options} onChoose={(id) => setPair([pair[0], id])} />
          </>
        )}
        <Choice
          label="In"
          value={of}
          options={outcomeNames.map((name) => [name, outcomeWords[name].name] as const)}
          onChoose={setOf}
        />
        {!wanted && (
          <button type="button" className="main" disabled={pair[0] === pair[1]} onClick={() => setAsked(key)}>
            Explain
          </button>
        )}
      </div>
      {logs.error && <p role="alert">A log could not be read: {logs.error.message}</p>}
      <Progress answer={answer} what="Both are cooked again" />
      {answer.kind === 'done' && !answer.value && (
        <p role="status">One of the logs tells too little to cook it again, or the model does not come to its end.</p>
      )}
      {answer.kind === 'done' && answer.value && (
        <div role="status">
          <p className="explained">{explanationText(answer.value, of, nameOf(pair[0]), nameOf(pair[1]))}</p>
          <SeenByTwins of={of} first={a} second={b} />
          <ExplainPicture explained={answer.value} of={of} />
          <p className="small quiet">
            Bars: what each adds; they add up to the model’s difference. Lines over them: 8 in 10 of{' '}
            {answer.value.draws} draws of what is uncertain in the model, the same for both cooks.
          </p>
        </div>
      )}
    </section>
  );
}

interface SeenProps {
  readonly of: OutcomeName;
  readonly first: Overlaid | undefined;
  readonly second: Overlaid | undefined;
}

/** The twin knows readings and spoon tests, the model only recipes: they need not agree. */
function SeenByTwins({ of, first, second }: SeenProps) {
  const [a, b] = [first?.summary.landed, second?.summary.landed];
  if ((of !== 'ebc' && of !== 'inverted') || !a || !b) return null;
  const seen = b[of].mid - a[of].mid;
  const { more, less } = outcomeWords[of];
  return (
    <p>
      The twin, which knows the readings and spoon tests, holds it {amountText(of, seen)} {seen < 0 ? less : more}.
    </p>
  );
}
