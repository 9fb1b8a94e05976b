import { describe, expect, it } from 'vitest';
import { rendered, sceneCamera, size } from '../../../../bench/measure/renderedPhoto.ts';
import { normalNumbers } from '../../reactions/normal.ts';
import { frameAt, leastSide } from './frames.ts';
import { guessedFrames } from './guessedFrames.ts';
import type { Picture, Region } from './patch.ts';

it('a frame stays within the picture and never holds fewer than 500 pixels', () => {
  const picture = { width: 400, height: 300 };
  expect(frameAt({ x: -50, y: 900 }, 60, picture)).toEqual({ left: 0, top: 240, width: 60, height: 60 });
  expect(frameAt({ x: 200, y: 150 }, 1, picture).width).toBe(leastSide);
  expect(leastSide ** 2).toBeGreaterThanOrEqual(500);
  expect(frameAt({ x: 0, y: 0 }, 9999, picture)).toEqual({ left: 0, top: 0, width: 300, height: 300 });
});

const lies = (inner: Region, { left, width }: { readonly left: number; readonly width: number }) =>
  inner.left >= left && inner.left + inner.width <= left + width;

describe('the first guess', () => {
  it.each([0.1, 0.45, 3])('finds the dilution and white to either side of it at an absorbance of %s', (a430Path) => {
    const scene = rendered(
      sceneCamera(normalNumbers(3), false),
      { a430Path, hueIndex: 6, exposure: 0.75 },
      normalNumbers(9),
    );
    const { frames, found } = guessedFrames(scene);
    expect(found).toBe(true);
    expect(lies(frames.sample, { left: 68, width: 56 })).toBe(true);
    expect(lies(frames.white1, { left: 0, width: 68 })).toBe(true);
    expect(lies(frames.white2, { left: 124, width: size.width - 124 })).toBe(true);
  });

  it('takes a wooden board below and a lone glass of water for what they are', () => {
    // White wall above, dark brown board below, the dilution left of the middle.
    const scene = painted(480, 360, (x, y) => {
      const grain = 20 * Math.sin(x / 3) * Math.sin(y / 5);
      if (y > 270) return [120 + grain, 80 + grain, 45 + grain];
      if (x > 130 && x < 250 && y > 90) return [205, 170, 110];
      return [215, 214, 210];
    });
    const { frames, found } = guessedFrames(scene);
    expect(found).toBe(true);
    expect(lies(frames.sample, { left: 130, width: 120 })).toBe(true);
    expect(frames.white1.top + frames.white1.height).toBeLessThanOrEqual(272);
    expect(frames.white2.top + frames.white2.height).toBeLessThanOrEqual(272);
  });

  it('says so when there is nothing brown', () => {
    const { frames, found } = guessedFrames(painted(480, 360, () => [90, 120, 200]));
    expect(found).toBe(false);
    expect(frames.white1.left).toBeLessThan(frames.sample.left);
  });
});

function painted(width: number, height: number, at: (x: number, y: number) => readonly number[]): Picture {
  const data = new Uint8ClampedArray(4 * width * height);
  for (let y = 0; y < height; y++) for (let x = 0; x < width; x++) data.set([...at(x, y), 255], 4 * (y * width + x));
  return { width, height, data };
}
