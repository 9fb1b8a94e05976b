import { expect, it } from 'vitest';
import { rendered, type Scene, sceneCamera } from '../../../../../../bench/measure/renderedPhoto.ts';
import { z95 } from '../../../../../core/colour/photo/pictureColour.ts';
import { normalNumbers } from '../../../../../core/reactions/normal.ts';
import { guessedFrames } from './guess.ts';
import { nextDilution } from './nextDilution.ts';
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
    expect(Math.abs(Math.log(a430Path / 0.45))).toBeLessThan(z95 * within);
}, 30_000);

it('a picture that is too dark is refused, with a dilution that can then be read', () => {
  const read = readOf({ a430Path: 3 });
  if (read.kind !== 'refused' || read.thinBy === undefined) throw new Error('expected to be told how far to thin');
  expect(read.faults.map(({ id }) => id)).toContain('sample too dark');
  const made = { sugarG: 1, totalMl: 100, fold: 2 };
  const { says, made: next } = nextDilution(made, read.thinBy);
  expect(says).toMatch(/^Thin it \d+ fold: 10 mL of it, made up to \d+ mL/);
  expect(readOf({ a430Path: (3 * made.fold) / (next?.fold ?? 1) }).kind).toBe('told');
});

it('a pale dilution is made stronger: thinned less, or with more sugar, or in a wider glass', () => {
  expect(nextDilution({ sugarG: 1, totalMl: 100, fold: 10 }, 0.2).made).toEqual({ sugarG: 1, totalMl: 100, fold: 2 });
  expect(nextDilution({ sugarG: 1, totalMl: 100, fold: 1 }, 0.3).says).toContain('4 g of the sugar, made up to 100 mL');
  expect(nextDilution({ sugarG: 30, totalMl: 100, fold: 1 }, 0.1).made).toBeUndefined();
});
