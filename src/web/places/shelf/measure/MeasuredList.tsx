/** Measurements that are kept: what each comes to by itself, by which way, and when. */
import type { Beforehand } from '../../../../core/lot/known.ts';
import type { Measured } from '../../../../core/lot/note.ts';
import { dayText } from '../../../parts/dayText.ts';
import type { Shown } from '../shown.ts';
import type { Notes } from '../useNotes.tsx';
import { methodWords } from './methods.ts';
import { resultWords } from './resultWords.ts';

interface ListProps {
  readonly shown: Shown;
  readonly known: Beforehand;
  readonly notes: Notes;
}

export function MeasuredList({ shown, known, notes }: ListProps) {
  const measured = shown.notes.filter(({ note }) => note.kind === 'measured').toReversed();
  if (measured.length === 0) return null;
  return (
    <>
      <h3>Kept</h3>
      <ul className="note-list">
        {measured.map((record) => {
          const { reading, at } = record.note as Measured;
          const result = resultWords(reading, known);
          const name = `${methodWords[reading.method].name}${reading.method === 'comparison' && reading.taught ? ' on a taught screen' : ''}`;
          return (
            <li key={record.id}>
              <span>
                <strong>{result.kind === 'says' ? result.value : 'nothing'}</strong>{' '}
                <span className="small quiet">
                  {result.kind === 'says' ? result.range : result.why}; {name}, {dayText(at)}
                </span>
              </span>
              <button type="button" className="plain" onClick={() => notes.remove(record)}>
                Take away
                <span className="unseen">
                  {' '}
                  {name} of {dayText(at)}
                </span>
              </button>
            </li>
          );
        })}
      </ul>
      <p className="small quiet">
        Ranges hold 8 times in 10. Readings by one way share its error, however many there are; readings that lie
        further apart than their errors make the range wider.
      </p>
    </>
  );
}
