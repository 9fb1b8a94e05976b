/** A tasting as it is written down: when, how strong each word is, how it was liked, and what else there is to say. */
import { useId, useState } from 'react';
import type { NewTasting } from '../../../api/tasting.ts';
import { weeksBetween } from '../../../core/beer/reminders.ts';
import { likingRange, weeksRange } from '../../../core/beer/tasting.ts';
import { type Descriptor, descriptors, longestNote } from '../../../core/lot/taste.ts';
import { Choice } from '../../parts/Choice.tsx';
import { DayField } from './DayField.tsx';
import { dayHere, timeOn } from './days.ts';

type Strengths = NewTasting['strengths'];

interface TastingFormProps {
  readonly bottledOn: string | null;
  readonly busy: boolean;
  readonly onKeep: (tasting: NewTasting, done: () => void) => void;
}

const none = Object.fromEntries(descriptors.map((name) => [name, null])) as Strengths;
const strengthWords = ['0 none', '1 a trace', '2 slight', '3 clear', '4 strong', '5 very strong'];
const strengthOptions = [['', 'not asked'] as const, ...strengthWords.map((word, at) => [String(at), word] as const)];
const likingOptions = [
  ['', 'not said'] as const,
  ...Array.from({ length: likingRange[1] + 1 }, (_, at) => [String(at), String(at)] as const),
];

export function TastingForm({ bottledOn, busy, onKeep }: TastingFormProps) {
  const [day, setDay] = useState(() => dayHere(new Date()));
  const [strengths, setStrengths] = useState<Strengths>(none);
  const [liking, setLiking] = useState<number | null>(null);
  const [note, setNote] = useState('');
  const noteId = useId();
  const weeks = weeksAt(bottledOn, day);
  const empty = liking === null && note.trim() === '' && Object.values(strengths).every((each) => each === null);

  function keep() {
    const tasting = { tastedAt: timeOn(day, new Date()), weeks, strengths, liking, note: note.trim() };
    onKeep(tasting, () => {
      setStrengths(none);
      setLiking(null);
      setNote('');
    });
  }

  return (
    <form
      className="tasting-form"
      aria-label="A tasting"
      onSubmit={(event) => {
        event.preventDefault();
        if (!empty && !busy) keep();
      }}
    >
      <div className="words">
        <DayField
          label="Tasted on"
          day={day}
          hint={weeks === null ? '' : `${weeks} weeks in the bottle`}
          onDay={(chosen) => chosen && setDay(chosen)}
        />
        <Choice
          label="Liked, 0 to 10"
          value={liking === null ? '' : String(liking)}
          options={likingOptions}
          onChoose={(value) => setLiking(numberOf(value))}
        />
        {descriptors.map((name) => (
          <Choice
            key={name}
            label={capital(name)}
            value={strengths[name] === null ? '' : String(strengths[name])}
            options={strengthOptions}
            onChoose={(value) => setStrengths({ ...strengths, [name as Descriptor]: numberOf(value) })}
          />
        ))}
      </div>
      <label htmlFor={noteId}>Note</label>
      <textarea
        id={noteId}
        rows={3}
        maxLength={longestNote}
        value={note}
        onChange={(event) => setNote(event.target.value)}
      />
      <button type="submit" className="main" disabled={empty || busy}>
        Keep this tasting
      </button>
    </form>
  );
}

/** To a tenth; none before the bottling, nor when nobody said when that was. */
function weeksAt(bottledOn: string | null, day: string): number | null {
  if (bottledOn === null) return null;
  const weeks = Math.round(10 * weeksBetween(bottledOn, day)) / 10;
  return weeks >= weeksRange[0] && weeks <= weeksRange[1] ? weeks : null;
}

function numberOf(value: string): number | null {
  return value === '' ? null : Number(value);
}

function capital(word: string): string {
  return `${word.charAt(0).toUpperCase()}${word.slice(1)}`;
}
