import { expect, it } from 'vitest';
import { rendered, type Scene, sceneCamera } from '../../../../bench/measure/renderedPhoto.ts';
import { normalNumbers } from '../../reactions/normal.ts';
import { guessedFrames } from './guessedFrames.ts';
import { z95 } from './pictureColour.ts';
import { readPicture, type Told } from './readPicture.ts';

const camera = sceneCamera(normalNumbers(401), false);

function readOf(scene: Partial<Scene>, known: readonly (Told & { readonly is: number })[] = []) {
  const picture = rendered(camera, { a430Path: 0.45, hueIndex: 6, exposure: 0.75, ...scene }, normalNumbers(7));
  const standards = known.map(({ absorbance, sd, is }) => ({ absorbance, sd, a430Path: is, knownWithin: 0.03 }));
  return readPicture(picture, guessedFrames(picture).frames, 'daylight', standards);
}

function told(read: ReturnType<typeof readOf>): Told {
  if (read.kind === 'refused') throw new Error(read.faults.map(({ why }) => why).join('; '));
  return read;
}

it('a rendered picture comes to its colour within the stated range, and a known dilution narrows that', () => {
  const alone = told(readOf({}));
  expect(alone.taught).toBe(false);
  const taught = told(readOf({}, [{ ...told(readOf({ a430Path: 0.35 })), is: 0.35 }]));
  expect(taught.taught).toBe(true);
  expect(taught.within).toBeLessThan(0.7 * alone.within);
  for (const { a430Path, within } of [alone, taught])
    expect(Math.abs(Math.log(a430Path.mid / 0.45))).toBeLessThan(z95 * within);
}, 30_000);
