/** A pan line on screen: as wide as its place, with a cross-hair that follows pointer, touch and arrow keys, and its words. */
import { type KeyboardEvent, type PointerEvent, type ReactNode, useMemo, useState } from 'react';
import { useTemperatureUnit } from '../TemperatureUnit.tsx';
import { CrossHair } from './CrossHair.tsx';
import { type Layout, layoutFor } from './layout.ts';
import { momentAt, sentenceOf } from './moment.ts';
import { PanLine } from './PanLine.tsx';
import type { Bands, Picture } from './picture.ts';
import { Readout } from './Readout.tsx';
import { useWidth } from './useWidth.ts';

interface FigureProps {
  readonly picture: Picture;
  readonly bands: Bands | undefined;
  readonly summary: string;
  /** What lies over the line to be taken hold of. */
  readonly hand?: (layout: Layout) => ReactNode;
  /** Another plan to draw behind this one. */
  readonly behind?: Picture | undefined;
  /** Which line is which. */
  readonly legend?: ReactNode;
}

const minuteS = 60;
const stepsByKey: Readonly<Record<string, number>> = {
  ArrowRight: 0.5,
  ArrowUp: 0.5,
  ArrowLeft: -0.5,
  ArrowDown: -0.5,
  PageUp: 10,
  PageDown: -10,
};

export function PanLineFigure({ picture, bands, summary, hand, behind, legend }: FigureProps) {
  const { unit } = useTemperatureUnit();
  const [frame, width] = useWidth();
  const [pointedS, setPointedS] = useState<number>();
  const { endS } = picture;
  const farthestS = Math.max(endS, behind?.endS ?? 0);
  const hottestC = Math.max(picture.hottestC, behind?.hottestC ?? 0);
  const rails = picture.plan.amounts.alkali ? 3 : 2;
  const layout = useMemo(() => layoutFor(width, farthestS, hottestC, rails), [width, farthestS, hottestC, rails]);
  const timeS = Math.min(endS, pointedS ?? endS);
  const moment = momentAt(picture, bands, timeS);

  const point = (event: PointerEvent<HTMLDivElement>) =>
    setPointedS(layout.timeAt(event.clientX - event.currentTarget.getBoundingClientRect().left));
  const press = (event: KeyboardEvent) => {
    const step = stepsByKey[event.key];
    if (step !== undefined) setPointedS(Math.min(endS, Math.max(0, timeS + step * minuteS)));
    else if (event.key === 'Home') setPointedS(0);
    else if (event.key === 'End') setPointedS(endS);
    else if (event.key === 'Escape') setPointedS(undefined);
    else return;
    event.preventDefault();
  };

  return (
    <figure className="pan-figure screen">
      <figcaption>{summary}</figcaption>
      <Readout moment={moment} resting={pointedS === undefined} />
      {legend}
      <div className="pan-hands">
        <div
          ref={frame}
          className="pan-frame"
          role="slider"
          tabIndex={0}
          aria-label="Time along the pan line"
          aria-orientation="horizontal"
          aria-valuemin={0}
          aria-valuemax={Math.round(endS)}
          aria-valuenow={Math.round(timeS)}
          aria-valuetext={sentenceOf(moment, unit)}
          onPointerMove={point}
          onPointerDown={point}
          onPointerLeave={(event) => event.pointerType === 'mouse' && setPointedS(undefined)}
          onKeyDown={press}
        >
          <svg width={layout.width} height={layout.height} aria-hidden="true">
            <PanLine picture={picture} bands={bands} layout={layout} unit={unit} behind={behind} />
            {pointedS !== undefined && <CrossHair moment={moment} layout={layout} />}
          </svg>
        </div>
        {hand?.(layout)}
      </div>
      <p className="small quiet">
        The ribbon is the syrup as a film of 1 mm on white. Its upper strand is the pale end, the middle what is
        expected, its lower strand the dark end: 8 in 10 cooks should land between them. Dashed lines and grey bands
        hold 8 in 10 cooks too. Nothing is learned of this kitchen yet, so colour is known to a factor of 2 or 3 only.
      </p>
    </figure>
  );
}
