import { expect, it } from 'vitest';
import { frameAt } from '../../../../../core/colour/photo/frames.ts';
import { afterKey, middleOf, sized } from './frames.ts';

const picture = { width: 400, height: 300 };

it('a frame moves and grows by keys, and other keys leave it alone', () => {
  const frame = frameAt({ x: 200, y: 150 }, 60, picture);
  expect(middleOf(afterKey('ArrowRight', frame, picture) ?? frame)).toEqual({ x: 204, y: 150 });
  expect(middleOf(afterKey('ArrowUp', frame, picture) ?? frame)).toEqual({ x: 200, y: 146 });
  expect(afterKey('+', frame, picture)?.width).toBe(72);
  expect(sized(frame, -1, picture).width).toBe(50);
  expect(afterKey('Tab', frame, picture)).toBeUndefined();
});
