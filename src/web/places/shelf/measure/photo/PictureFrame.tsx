/** One frame over the picture: its outline, and its name on a tag. The sample's outline is whole, those of the white are broken. */

import type { FrameName, Size } from '../../../../../core/colour/photo/frames.ts';
import type { Region } from '../../../../../core/colour/photo/patch.ts';
import { frameWords, middleOf } from './frames.ts';

interface FrameProps {
  readonly name: FrameName;
  readonly frame: Region;
  readonly of: Size;
  readonly chosen: boolean;
  readonly help: string;
  readonly onChoose: () => void;
  /** @returns whether the key was for the frame */
  readonly onKey: (key: string) => boolean;
}

const share = (part: number, of: number): string => `${((100 * part) / of).toFixed(2)}%`;

export function PictureFrame({ name, frame, of, chosen, help, onChoose, onKey }: FrameProps) {
  const middle = middleOf(frame);
  const whole = (part: number, all: number) => `${Math.round((100 * part) / all)} %`;
  return (
    <button
      type="button"
      className="photo-frame"
      data-frame={name}
      data-kind={name === 'sample' ? 'sample' : 'white'}
      data-low={frame.top < 0.12 * of.height ? '' : undefined}
      aria-pressed={chosen}
      aria-label={`${frameWords[name]}: ${whole(middle.x, of.width)} across, ${whole(middle.y, of.height)} down, ${whole(frame.width, of.width)} wide`}
      aria-describedby={help}
      style={{
        left: share(frame.left, of.width),
        top: share(frame.top, of.height),
        width: share(frame.width, of.width),
        height: share(frame.height, of.height),
      }}
      onFocus={onChoose}
      onKeyDown={(event) => {
        if (!event.ctrlKey && !event.metaKey && !event.altKey && onKey(event.key)) event.preventDefault();
      }}
    >
      <span className="photo-tag">
        <svg viewBox="0 0 12 12" aria-hidden="true">
          {name === 'sample' ? <circle cx="6" cy="6" r="5" /> : <path d="M1.5 1.5h9v9h-9z" />}
        </svg>
        {frameWords[name]}
      </span>
    </button>
  );
}
