/** The picture with its frames. A tap puts the chosen one there, it can be dragged, and arrow keys move it. */
import { useEffect, useId, useRef, useState } from 'react';
import { type FrameName, type Frames, frameAt, frameNames } from '../../../../../core/colour/photo/frames.ts';
import { Picks } from '../../../../parts/Picks.tsx';
import { afterKey, frameWords, sized } from './frames.ts';
import { PictureFrame } from './PictureFrame.tsx';
import { usePlacing } from './usePlacing.ts';

interface ViewProps {
  readonly pixels: ImageData;
  readonly frames: Frames;
  readonly found: boolean;
  readonly onFrames: (frames: Frames) => void;
}

export function PictureView({ pixels, frames, found, onFrames }: ViewProps) {
  const [chosen, setChosen] = useState<FrameName>('sample');
  const canvas = useRef<HTMLCanvasElement>(null);
  const help = useId();
  useEffect(() => canvas.current?.getContext('2d')?.putImageData(pixels, 0, 0), [pixels]);
  const put = (name: FrameName, frame: Frames[FrameName]) => onFrames({ ...frames, [name]: frame });
  const stage = usePlacing(pixels, (name, spot) => {
    const which = name ?? chosen;
    setChosen(which);
    put(which, frameAt(spot, frames[which].width, pixels));
  });

  return (
    <div className="photo-view">
      <p className="small" id={help}>
        {found
          ? 'The frames were put where dilution and white seem to be. Look whether they are right.'
          : 'Dilution and white were not found: put the frames there.'}{' '}
        Tap where the chosen frame belongs, drag it, or move it by arrow keys; plus and minus size it.
      </p>
      <div
        ref={stage}
        className="photo-stage"
        style={{
          aspectRatio: `${pixels.width} / ${pixels.height}`,
          maxWidth: `${(30 * pixels.width) / pixels.height}rem`,
        }}
      >
        <canvas ref={canvas} width={pixels.width} height={pixels.height} role="img" aria-label="The picture" />
        {frameNames.map((name) => (
          <PictureFrame
            key={name}
            name={name}
            frame={frames[name]}
            of={pixels}
            chosen={name === chosen}
            help={help}
            onChoose={() => setChosen(name)}
            onKey={(key) => {
              const next = afterKey(key, frames[name], pixels);
              if (next) put(name, next);
              return next !== undefined;
            }}
          />
        ))}
      </div>
      <div className="photo-frame-acts">
        <Picks
          legend="Frame to move"
          value={chosen}
          options={frameNames.map((value) => ({ value, name: frameWords[value] }))}
          onPick={setChosen}
          row
        />
        <div className="shelf-acts">
          <button type="button" onClick={() => put(chosen, sized(frames[chosen], -1, pixels))}>
            Smaller
          </button>
          <button type="button" onClick={() => put(chosen, sized(frames[chosen], 1, pixels))}>
            Bigger
          </button>
        </div>
      </div>
    </div>
  );
}
