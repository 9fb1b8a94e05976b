/** How a lot tastes: its profile, a new tasting, and those that are kept. */
import type { Tasted } from '../../../../core/lot/note.ts';
import { dayText } from '../../../parts/dayText.ts';
import type { Shown } from '../shown.ts';
import type { Notes } from '../useNotes.tsx';
import { Profile } from './Profile.tsx';
import { TasteForm } from './TasteForm.tsx';

interface TasteProps {
  readonly shown: Shown;
  readonly notes: Notes;
}

export function Taste({ shown, notes }: TasteProps) {
  const records = shown.notes.filter(({ note }) => note.kind === 'tasted').toReversed();
  return (
    <section className="taste" aria-labelledby="lot-taste">
      <h2 id="lot-taste">Taste</h2>
      <Profile tastings={records.map(({ note }) => note as Tasted)} />
      {records.length > 0 && (
        <ul className="note-list">
          {records.map((record) => {
            const { at, texture, note, blind } = record.note as Tasted;
            const words = [blind && 'blind', texture].filter(Boolean).join(', ');
            return (
              <li key={record.id}>
                <span>
                  <strong>{dayText(at)}</strong>
                  {words && `, ${words}`}
                  {note !== '' && <span className="taste-note">{note}</span>}
                </span>
                <button type="button" className="plain" onClick={() => notes.remove(record)}>
                  Take away<span className="unseen"> the tasting of {dayText(at)}</span>
                </button>
              </li>
            );
          })}
        </ul>
      )}
      <details open={records.length === 0}>
        <summary>A new tasting</summary>
        <TasteForm name={shown.lot.name} blind={false} busy={notes.busy} onKeep={notes.keep} />
      </details>
    </section>
  );
}
