/** A picture from the phone's camera or out of a file. It is read in the browser, and neither sent nor kept. */
import { WrongMark } from '../../../../parts/Field.tsx';
import { PictureFile } from '../../../../parts/PictureFile.tsx';

interface InputProps {
  readonly again: boolean;
  readonly trouble: string | undefined;
  readonly onFile: (file: File) => void;
}

export function PictureInput({ again, trouble, onFile }: InputProps) {
  return (
    <div className="photo-input">
      <div className="shelf-acts">
        <PictureFile name={again ? 'Take another picture' : 'Take a picture'} camera onFile={onFile} />
        <PictureFile name={again ? 'Choose another one' : 'Choose a picture'} onFile={onFile} />
      </div>
      <p className="small quiet">It stays on this device and is not kept: only the figures read from it are.</p>
      <div role="alert">
        {trouble && (
          <p>
            <WrongMark />
            {trouble}
          </p>
        )}
      </div>
    </div>
  );
}
