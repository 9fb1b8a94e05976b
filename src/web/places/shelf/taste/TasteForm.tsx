/** A tasting as it is written down: words with a strength, how it feels, and what else there is to say. */
import { useId, useState } from 'react';
import type { NewNote } from '../../../../api/lotNote.ts';
import { longestNote, type Texture, textures } from '../../../../core/lot/taste.ts';
import { Choice } from '../../../parts/Choice.tsx';
import { nothingTasted, StrengthFields } from './StrengthFields.tsx';

interface TasteFormProps {
  readonly name: string;
  readonly blind: boolean;
  readonly busy: boolean;
  readonly onKeep: (note: NewNote, done: () => void) => void;
}

const textureOptions = [['', 'not said'] as const, ...textures.map((texture) => [texture, texture] as const)];

export function TasteForm({ name, blind, busy, onKeep }: TasteFormProps) {
  const [strengths, setStrengths] = useState(nothingTasted);
  const [texture, setTexture] = useState<Texture | ''>('');
  const [note, setNote] = useState('');
  const noteId = useId();
  const empty = texture === '' && note.trim() === '' && Object.values(strengths).every((each) => each === null);

  function keep() {
    const tasted = { strengths, texture: texture === '' ? null : texture, note: note.trim(), blind };
    onKeep({ kind: 'tasted', at: new Date().toISOString(), ...tasted }, () => {
      setStrengths(nothingTasted);
      setTexture('');
      setNote('');
    });
  }

  return (
    <form
      className="taste-form"
      aria-label={`A tasting of ${name}`}
      onSubmit={(event) => {
        event.preventDefault();
        if (!empty && !busy) keep();
      }}
    >
      <p className="small">
        Only cold sugar is tasted. 0 none, 1 a trace, 3 clear, 5 very strong; a word may be left out.
      </p>
      <StrengthFields strengths={strengths} onStrengths={setStrengths} />
      <div className="taste-more">
        <Choice label="Texture" value={texture} options={textureOptions} onChoose={setTexture} />
        <div>
          <label className="small quiet" htmlFor={noteId}>
            Note
          </label>
          <textarea
            id={noteId}
            rows={3}
            maxLength={longestNote}
            value={note}
            onChange={(event) => setNote(event.target.value)}
          />
        </div>
        <button type="submit" className="main" disabled={empty || busy}>
          Keep this tasting
        </button>
      </div>
    </form>
  );
}
