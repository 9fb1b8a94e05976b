/** Colour from a picture: how to take it, the picture with its frames, what it comes to, and what it can teach the phone. */
import { useState } from 'react';
import { guessedFrames } from '../../../../../core/colour/photo/guessedFrames.ts';
import type { Beforehand } from '../../../../../core/lot/known.ts';
import { lightPathCm } from '../../../../../core/lot/measure/colour.ts';
import type { MadeUp, PhotoSetUp } from '../../../../../core/lot/note.ts';
import { type Sheet, troubles } from '../../../../parts/entry.ts';
import type { Shown } from '../../shown.ts';
import type { Notes } from '../../useNotes.tsx';
import { DilutionHelper } from '../DilutionHelper.tsx';
import { decoded } from './decode.ts';
import { type Looked, PhotoAnswer } from './PhotoAnswer.tsx';
import { PhotoSetUpFields } from './PhotoSetUpFields.tsx';
import { PictureInput } from './PictureInput.tsx';
import { PictureView } from './PictureView.tsx';
import { photoEntries, photoForm } from './photoForm.ts';
import { readingOf } from './readingOf.ts';
import { Teach } from './Teach.tsx';
import { usedIn, useTaughtPhone } from './taughtPhone.ts';
import { usePictureRead } from './usePictureRead.ts';
import './photo.css';

interface FormProps {
  readonly shown: Shown;
  readonly known: Beforehand;
  readonly notes: Notes;
}

export function PhotoForm({ shown, known, notes }: FormProps) {
  const [sheet, setSheet] = useState<Sheet<PhotoSetUp>>({ good: photoForm.start, texts: {} });
  const [looked, setLooked] = useState<Looked>();
  const [trouble, setTrouble] = useState<string>();
  const [sameCamera, setSameCamera] = useState(true);
  const setUp = sheet.good;
  const taught = usedIn(setUp.light, useTaughtPhone()).filter(({ id }) => id !== looked?.teaches);
  const standards = sameCamera ? taught : [];
  const read = usePictureRead(looked?.pixels, looked && { frames: looked.frames, light: setUp.light, standards });
  const wrong = Object.keys(troubles(sheet, photoEntries(setUp))).length > 0;
  const reading = read?.kind === 'told' && !wrong ? readingOf(setUp, read) : undefined;
  const can = reading !== undefined && !looked?.teaches && !notes.busy;

  async function open(file: File) {
    try {
      const pixels = await decoded(file);
      setLooked({ pixels, ...guessedFrames(pixels) });
      setTrouble(undefined);
    } catch (error) {
      setTrouble(error instanceof Error ? error.message : String(error));
    }
  }
  function remake(made: MadeUp) {
    setSheet({ good: { ...setUp, ...made }, texts: {} });
    setLooked(undefined);
  }

  return (
    <form
      aria-label={photoForm.name}
      onSubmit={(event) => {
        event.preventDefault();
        const at = new Date().toISOString();
        if (can) notes.keep({ kind: 'measured', at, reading }, () => setLooked(undefined));
      }}
    >
      <ol className="small steps">
        {photoForm.steps.map((step) => (
          <li key={step}>{step}</li>
        ))}
      </ol>
      <DilutionHelper shown={shown} pathCm={lightPathCm(setUp)} onTake={remake} />
      <PhotoSetUpFields sheet={sheet} onSheet={setSheet} />
      {taught.length === 0 && (
        <p className="small">
          <strong>Teach this phone first, if you can.</strong> Until it has seen one dilution whose colour a photometer
          gave, in the same light, half of its readings are off by a tenth or more; afterwards half are within a
          twenty-fifth. How: “Teach the phone”, below.
        </p>
      )}
      <PictureInput again={looked !== undefined} trouble={trouble} onFile={(file) => void open(file)} />
      {looked && <PictureView {...looked} onFrames={(frames) => setLooked({ ...looked, frames })} />}
      {taught.length > 0 && (
        <label className="photo-same">
          <input type="checkbox" checked={sameCamera} onChange={() => setSameCamera(!sameCamera)} />
          Taken with this phone, in the light it was taught in
        </label>
      )}
      {looked && (
        <PhotoAnswer looked={looked} read={read} reading={reading} setUp={setUp} known={known} onRemake={remake} />
      )}
      <button type="submit" className="main" disabled={!can}>
        Keep this measurement
      </button>
      <Teach
        shown={shown}
        known={known}
        setUp={setUp}
        read={wrong ? undefined : read}
        done={looked?.teaches !== undefined}
        onTaught={(teaches) => looked && setLooked({ ...looked, teaches })}
      />
    </form>
  );
}
