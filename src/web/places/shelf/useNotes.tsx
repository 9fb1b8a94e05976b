/** Notes on a lot: keeping one, taking one away, and what became of it, with a way back. */

import { type ReactNode, useState } from 'react';
import type { NewNote, NoteRecord } from '../../../api/lotNote.ts';
import { type Notice, NoticeLine } from '../../parts/NoticeLine.tsx';
import { failureOf } from '../../records/failureOf.ts';
import { newId } from '../../records/newId.ts';
import { useKeepNote, useRemoveNote } from '../../records/useLots.ts';

export interface Notes {
  readonly busy: boolean;
  keep(note: NewNote, done?: () => void): void;
  remove(record: NoteRecord): void;
  /** What became of the last one. */
  readonly said: ReactNode;
}

const keptWords = { measured: 'Measurement kept.', tasted: 'Tasting kept.', stocked: 'Stock noted.' } as const;

export function useNotes(lotId: string): Notes {
  const keeping = useKeepNote();
  const removing = useRemoveNote(lotId);
  const [notice, setNotice] = useState<Notice>();
  const onError = (error: unknown) => setNotice({ says: failureOf(error, 'Not done') });

  function write(id: string, note: NewNote, done: () => void) {
    keeping.mutate({ lotId, id, note }, { onError, onSuccess: done });
  }

  function remove({ id, note }: NoteRecord) {
    const undo = () => write(id, note, () => setNotice({ says: 'It is there again.' }));
    removing.mutate(id, { onError, onSuccess: () => setNotice({ says: 'Taken away.', undo }) });
  }

  function keep(note: NewNote, done?: () => void) {
    const id = newId();
    write(id, note, () => {
      setNotice({ says: keptWords[note.kind], undo: () => remove({ id, note, created: note.at }) });
      done?.();
    });
  }

  const said = (
    <div className="lot-notice" role="status">
      <NoticeLine notice={notice} />
    </div>
  );
  return { busy: keeping.isPending || removing.isPending, keep, remove, said };
}
