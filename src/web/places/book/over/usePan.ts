/** Moves one group of a picture sideways, straight in the document: nothing is drawn anew. */
import { type PointerEvent, useRef } from 'react';

export interface Pan {
  readonly moving: React.RefObject<SVGGElement | null>;
  /** Where it stands when it is drawn anew, px. */
  readonly offsetPx: number;
  moveBy(px: number): void;
  readonly drag: {
    onPointerDown(event: PointerEvent<HTMLElement>): void;
    onPointerMove(event: PointerEvent): void;
    onPointerUp(): void;
  };
}

/** @param farthestPx as far as it goes to the left: zero or less */
export function usePan(farthestPx: number): Pan {
  const moving = useRef<SVGGElement>(null);
  const offset = useRef(0);
  const from = useRef<number>(undefined);
  const held = (to: number) => Math.min(0, Math.max(farthestPx, to));
  const move = (to: number) => {
    offset.current = held(to);
    moving.current?.setAttribute('transform', `translate(${offset.current} 0)`);
  };
  // Smaller than before, it may no longer reach so far.
  offset.current = held(offset.current);
  return {
    moving,
    offsetPx: offset.current,
    moveBy: (px) => move(offset.current + px),
    drag: {
      onPointerDown(event) {
        if (farthestPx === 0) return;
        event.currentTarget.setPointerCapture(event.pointerId);
        from.current = event.clientX - offset.current;
      },
      onPointerMove(event) {
        if (from.current !== undefined) move(event.clientX - from.current);
      },
      onPointerUp() {
        from.current = undefined;
      },
    },
  };
}
