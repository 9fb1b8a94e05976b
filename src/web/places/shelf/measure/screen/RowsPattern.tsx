/** Rows of full black and full white with an even grey amid them. Each row is one pixel of the screen: scaled, a browser would mix the two. */
import { useEffect, useRef, useSyncExternalStore } from 'react';

interface PatternProps {
  readonly label: string;
  /** One row in so many is white. */
  readonly every: number;
  /** 8-bit level of the block in the middle. */
  readonly grey: number;
}

/** About what it takes on the page, CSS px. */
const tall = 144;

export function RowsPattern({ label, every, grey }: PatternProps) {
  const canvas = useRef<HTMLCanvasElement>(null);
  const ratio = useSyncExternalStore(onResize, () => devicePixelRatio);
  // A whole number of the screen's pixels, so that the browser has nothing to scale; rounding may still double or drop one row of all.
  const height = 4 * every * Math.round((tall * ratio) / (4 * every));
  useEffect(() => {
    const context = canvas.current?.getContext('2d');
    if (!context) return;
    context.fillStyle = '#000';
    context.fillRect(0, 0, 3, height);
    context.fillStyle = '#fff';
    for (let y = 0; y < height; y += every) context.fillRect(0, y, 3, 1);
    context.fillStyle = `rgb(${grey} ${grey} ${grey})`;
    context.fillRect(1, height / 4, 1, height / 2);
  }, [height, every, grey]);
  return (
    <canvas
      ref={canvas}
      className="rows-pattern"
      width={3}
      height={height}
      style={{ height: `${height / ratio}px` }}
      role="img"
      aria-label={label}
    />
  );
}

/** Zooming the page changes the ratio, and resizes. */
function onResize(listener: () => void): () => void {
  addEventListener('resize', listener);
  return () => removeEventListener('resize', listener);
}
