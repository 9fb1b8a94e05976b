/** A cook that was written down elsewhere, as a table: which column says what, a look at what it says, then all of it or nothing. */
import { useMemo, useState } from 'react';
import { Link } from 'wouter';
import { previewTable } from '../../../../core/learn/imported/preview.ts';
import { Choice } from '../../../parts/Choice.tsx';
import { useTitle } from '../../../parts/useTitle.ts';
import { usePlans } from '../../../records/usePlans.ts';
import type { KitHand } from '../useKitInHand.ts';
import { type Answers, answersFor, mappingOf, rememberAnswers } from './answers.ts';
import { begunFrom } from './begunFrom.ts';
import { ColumnQuestions } from './ColumnQuestions.tsx';
import { PreviewView } from './PreviewView.tsx';
import { TakeIn } from './TakeIn.tsx';

export function ImportPage({ hand }: { readonly hand: KitHand }) {
  const { record } = hand;
  const plans = usePlans();
  const [text, setText] = useState<string>();
  const [planId, setPlanId] = useState<string>();
  const [answers, setAnswers] = useState<Answers>();
  useTitle(`Import a cook · ${record?.kit.name ?? 'Kit'}`);
  const kept = plans.data ?? [];
  const plan = kept.find(({ id }) => id === planId) ?? kept[0];
  const begun = useMemo(() => (record && plan ? begunFrom(plan, record.kit) : undefined), [record, plan]);
  const mapping = answers && mappingOf(answers);
  const preview = useMemo(
    () =>
      text !== undefined && mapping && begun?.kind === 'begun' ? previewTable(text, mapping, begun.begun) : undefined,
    [text, mapping, begun],
  );
  if (!record) return <main id="main" className="kit" />;

  async function open(file: File | undefined) {
    if (!file) return;
    const read = await file.text();
    setText(read);
    setAnswers(answersFor(read, file.lastModified));
  }

  return (
    <main id="main" className="kit import">
      <header className="kit-head">
        <p>
          <Link href={`/kit/${record.id}`} className="back">
            {record.kit.name}
          </Link>
        </p>
        <h1>Import a cook</h1>
        <p className="quiet">
          A table of times, temperatures and deeds: CSV with a head, or an object of JSON a line. Nothing is taken
          before you have seen what it says, and then all of it or nothing.
        </p>
      </header>
      {kept.length === 0 ? (
        <p className="kit-note">
          A cook goes by a plan: what was in the pan, and its steps. <Link href="/">Save the plan at the Desk</Link>{' '}
          first.
        </p>
      ) : (
        <section className="doing">
          <Choice
            label="Plan that was cooked"
            value={plan?.id ?? ''}
            options={kept.map(
              ({ id, request }) => [id, `${request.name}, ${(request.massKg * 1000).toFixed(0)} g`] as const,
            )}
            refusal={begun?.kind === 'refused' ? begun.message : undefined}
            onChoose={setPlanId}
          />
          <label className="file">
            <span>Table</span>
            <input
              type="file"
              accept=".csv,.tsv,.txt,.ndjson,.jsonl,.json,text/csv"
              onChange={(event) => void open(event.target.files?.[0])}
            />
          </label>
          {answers && text !== undefined && <ColumnQuestions answers={answers} onAnswers={setAnswers} />}
        </section>
      )}
      {preview && answers && <PreviewView preview={preview} />}
      {preview && answers && begun?.kind === 'begun' && preview.wrong.length === 0 && (
        <TakeIn
          preview={preview}
          begun={begun.begun}
          startMs={answers.beganMs}
          kitId={record.id}
          away={hand.reach !== 'reached'}
          onTaken={() => rememberAnswers(answers)}
        />
      )}
    </main>
  );
}
