/** What a picture comes to before it is kept: a colour with its range, or why the picture can't tell and what to make instead. */
import type { Guess } from '../../../../../core/colour/photo/guessedFrames.ts';
import type { PictureRead, Refused } from '../../../../../core/colour/photo/readPicture.ts';
import type { Beforehand } from '../../../../../core/lot/known.ts';
import { nextDilution } from '../../../../../core/lot/measure/nextDilution.ts';
import type { MadeUp, Photo, PhotoSetUp } from '../../../../../core/lot/note.ts';
import { WrongMark } from '../../../../parts/Field.tsx';
import { lightWords } from './PhotoSetUpFields.tsx';
import { colourWords } from './readingOf.ts';

/** A picture that is open, with its frames. */
export interface Looked extends Guess {
  readonly pixels: ImageData;
  /** The dilution of known colour that it taught the phone: it can't measure too. */
  readonly teaches?: string;
}

interface AnswerProps {
  readonly looked: Looked;
  /** None while it is being read. */
  readonly read: PictureRead | undefined;
  readonly reading: Photo | undefined;
  readonly setUp: PhotoSetUp;
  readonly known: Beforehand;
  readonly onRemake: (made: MadeUp) => void;
}

export function PhotoAnswer({ looked, read, reading, setUp, known, onRemake }: AnswerProps) {
  const words = reading && colourWords(reading, known);
  return (
    <div className="result photo-answer" role="status">
      {!read && <p className="quiet">Reading the picture…</p>}
      {read?.kind === 'refused' && <Refusal refused={read} setUp={setUp} onRemake={onRemake} />}
      {reading && words && (
        <>
          <p>
            <strong className="figure">{words.value}</strong> <span className="quiet">{words.range}, 9 in 10</span>
          </p>
          {!looked.teaches && (
            <p className="small quiet">
              {reading.taught
                ? `Read with what this phone was taught in ${lightWords[reading.light]}.`
                : `Any phone in ${lightWords[reading.light]} could have taken it. Teach yours by a dilution of known colour, and the range gets narrower.`}
            </p>
          )}
        </>
      )}
      {looked.teaches && <p>This picture taught the phone. To measure, take another one.</p>}
    </div>
  );
}

interface RefusalProps {
  readonly refused: Refused;
  readonly setUp: PhotoSetUp;
  readonly onRemake: (made: MadeUp) => void;
}

function Refusal({ refused: { faults, thinBy }, setUp, onRemake }: RefusalProps) {
  const next = thinBy === undefined ? undefined : nextDilution(setUp, thinBy);
  return (
    <>
      <p>
        <WrongMark />
        <strong>This picture can’t tell.</strong>
      </p>
      <ul className="photo-faults">
        {faults.map(({ id, why }) => (
          <li key={id}>
            <strong>{id[0]?.toUpperCase() + id.slice(1)}:</strong> {why}.
          </li>
        ))}
      </ul>
      {next && <p>{next.says} Then take another picture.</p>}
      {next?.made && (
        <button type="button" onClick={() => next.made && onRemake(next.made)}>
          I made it so
        </button>
      )}
    </>
  );
}
