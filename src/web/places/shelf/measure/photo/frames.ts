/** How a person moves the three frames that lie over a picture. */
import { type FrameName, frameAt, type Size, type Spot } from '../../../../../core/colour/photo/frames.ts';
import type { Region } from '../../../../../core/colour/photo/patch.ts';

export const frameWords: Readonly<Record<FrameName, string>> = {
  sample: 'Sample',
  white1: 'White 1',
  white2: 'White 2',
};

/** By how much a press of a key moves and sizes, of the picture's longer side and of the frame. */
const moveShare = 0.01;
const sizeFactor = 1.2;

export function middleOf({ left, top, width, height }: Region): Spot {
  return { x: left + width / 2, y: top + height / 2 };
}

const arrows: Readonly<Record<string, Spot>> = {
  ArrowLeft: { x: -1, y: 0 },
  ArrowRight: { x: 1, y: 0 },
  ArrowUp: { x: 0, y: -1 },
  ArrowDown: { x: 0, y: 1 },
};

/** The frame after a key: arrows move it, plus and minus size it; none when the key is for something else. */
export function afterKey(key: string, frame: Region, size: Size): Region | undefined {
  if (key === '+' || key === '=') return sized(frame, 1, size);
  if (key === '-') return sized(frame, -1, size);
  const way = arrows[key];
  if (!way) return undefined;
  const step = Math.max(1, moveShare * Math.max(size.width, size.height));
  const { x, y } = middleOf(frame);
  return frameAt({ x: x + way.x * step, y: y + way.y * step }, frame.width, size);
}

/** @param by 1 for one step bigger, -1 for one smaller */
export function sized(frame: Region, by: 1 | -1, size: Size): Region {
  return frameAt(middleOf(frame), frame.width * sizeFactor ** by, size);
}
