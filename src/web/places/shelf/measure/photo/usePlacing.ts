/** Pointers over the picture: a press on a frame drags that one, a tap beside them puts the chosen one there. */
import { type RefObject, useEffect, useRef } from 'react';
import { type FrameName, frameNames, type Size, type Spot } from '../../../../../core/colour/photo/frames.ts';

/** A finger that moves further than this before it lifts scrolls the page, px. */
const tapPx = 10;

interface Held {
  readonly name: FrameName | undefined;
  readonly from: PointerEvent;
  /** From the pointer to the middle of the frame, px. */
  readonly offX: number;
  readonly offY: number;
  moved: boolean;
}

/** @param onPut told the frame that was dragged, or none for the chosen one, and the spot of the picture its middle goes to */
export function usePlacing(
  size: Size,
  onPut: (name: FrameName | undefined, spot: Spot) => void,
): RefObject<HTMLDivElement | null> {
  const stage = useRef<HTMLDivElement>(null);
  const latest = useRef({ size, onPut });
  latest.current = { size, onPut };
  useEffect(() => {
    const on = stage.current;
    if (!on) return;
    const listening = new AbortController();
    const { signal } = listening;
    const spotOf = (clientX: number, clientY: number): Spot => {
      const { left, top, width, height } = on.getBoundingClientRect();
      const { size } = latest.current;
      return { x: ((clientX - left) / width) * size.width, y: ((clientY - top) / height) * size.height };
    };
    let held: Held | undefined;
    on.addEventListener(
      'pointerdown',
      (event) => {
        const frame = event.target instanceof Element ? event.target.closest('[data-frame]') : null;
        const name = frameNames.find((each) => each === frame?.getAttribute('data-frame'));
        const box = frame?.getBoundingClientRect();
        const offX = box ? box.left + box.width / 2 - event.clientX : 0;
        const offY = box ? box.top + box.height / 2 - event.clientY : 0;
        held = { name, from: event, offX, offY, moved: false };
        if (name) on.setPointerCapture(event.pointerId);
      },
      { signal },
    );
    on.addEventListener(
      'pointermove',
      (event) => {
        if (!held || event.pointerId !== held.from.pointerId) return;
        held.moved ||= Math.hypot(event.clientX - held.from.clientX, event.clientY - held.from.clientY) > tapPx;
        if (held.moved && held.name) {
          latest.current.onPut(held.name, spotOf(event.clientX + held.offX, event.clientY + held.offY));
        }
      },
      { signal },
    );
    on.addEventListener(
      'pointerup',
      (event) => {
        if (held && !held.name && !held.moved) {
          latest.current.onPut(undefined, spotOf(event.clientX, event.clientY));
        }
        held = undefined;
      },
      { signal },
    );
    on.addEventListener('pointercancel', () => (held = undefined), { signal });
    return () => listening.abort();
  }, []);
  return stage;
}
