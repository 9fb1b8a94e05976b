/** Which column says what, in which unit, and when it began: asked once for tables of the same head. */
import { timeExamples, timeForms } from '../../../../core/learn/imported/times.ts';
import type { ReadingUnit } from '../../../../core/log/bodies.ts';
import { Choice } from '../../../parts/Choice.tsx';
import type { Answers } from './answers.ts';

interface ColumnQuestionsProps {
  readonly answers: Answers;
  readonly onAnswers: (answers: Answers) => void;
}

const formNames = { s: 'seconds', min: 'minutes', clock: 'clock', instant: 'day and clock, UTC' } as const;
const unitNames: readonly (readonly [ReadingUnit | '', string])[] = [
  ['', 'Say which'],
  ['Cel', '°C'],
  ['[degF]', '°F'],
  ['K', 'K'],
];

export function ColumnQuestions({ answers, onAnswers }: ColumnQuestionsProps) {
  const change = (part: Partial<Answers>) => onAnswers({ ...answers, ...part });
  const columns = answers.columns.map((name) => [name, name] as const);
  return (
    <div className="pairs">
      <Choice label="Times" value={answers.time} options={columns} onChoose={(time) => change({ time })} />
      <Choice
        label="Written as"
        value={answers.timeForm}
        options={timeForms.map((form) => [form, `${formNames[form]}: ${timeExamples[form]}`] as const)}
        onChoose={(timeForm) => change({ timeForm })}
      />
      <Choice
        label="Temperatures"
        value={answers.temperature}
        options={columns}
        onChoose={(temperature) => change({ temperature })}
      />
      <Choice
        label="They are in"
        value={answers.unit}
        options={unitNames}
        hint={answers.unit === '' ? 'it has to be said: it is never guessed' : undefined}
        onChoose={(unit) => change({ unit })}
      />
      <Choice
        label="What was done"
        value={answers.deed}
        options={[['', 'no such column'], ...columns]}
        hint="heat 4, spoonfuls 2, water 30 g, alkali, step brown, poured"
        onChoose={(deed) => change({ deed })}
      />
      <div className="field">
        <label htmlFor="began">Pan on the ring at</label>
        <input
          id="began"
          type="datetime-local"
          value={localText(answers.beganMs)}
          onChange={({ target }) => {
            const ms = Date.parse(target.value);
            if (Number.isFinite(ms)) change({ beganMs: ms });
          }}
        />
        <p className="line">time of this device; the first row is the beginning</p>
      </div>
    </div>
  );
}

/** As the field wants it: local time without zone. */
function localText(ms: number): string {
  const offsetMs = new Date(ms).getTimezoneOffset() * 60_000;
  return new Date(ms - offsetMs).toISOString().slice(0, 16);
}
