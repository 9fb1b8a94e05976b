/** A picture from the phone's camera or out of a file. It is read in the browser, and neither sent nor kept. */
import { WrongMark } from '../../../../parts/Field.tsx';

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

interface FileProps {
  readonly name: string;
  readonly camera?: boolean;
  readonly onFile: (file: File) => void;
}

function PictureFile({ name, camera, onFile }: FileProps) {
  return (
    <label className={camera ? 'button photo-file photo-camera' : 'button photo-file'}>
      {name}
      <input
        type="file"
        accept="image/*"
        {...(camera && { capture: 'environment' as const })}
        onChange={({ target }) => {
          const file = target.files?.[0];
          if (file) onFile(file);
          // The same file may be chosen once more.
          target.value = '';
        }}
      />
    </label>
  );
}
