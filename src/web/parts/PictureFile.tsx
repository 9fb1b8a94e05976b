/** A button that lets a picture be taken or chosen, and hands the file over; what becomes of it is the caller's matter. */
import './pictureFile.css';

interface PictureFileProps {
  readonly name: string;
  /** Opens the camera, where there is one. */
  readonly camera?: boolean;
  readonly onFile: (file: File) => void;
}

export function PictureFile({ name, camera, onFile }: PictureFileProps) {
  return (
    <label className={camera ? 'button picture-file picture-camera' : 'button picture-file'}>
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
