import { expect, it } from 'vitest';
import { rendered, sceneCamera } from '../../../../bench/measure/renderedPhoto.ts';
import { guessedFrames } from '../../colour/photo/guessedFrames.ts';
import { readPicture } from '../../colour/photo/readPicture.ts';
import { normalNumbers } from '../../reactions/normal.ts';
import { nextDilution } from './nextDilution.ts';

function readOf(a430Path: number) {
  const camera = sceneCamera(normalNumbers(401), false);
  const picture = rendered(camera, { a430Path, hueIndex: 6, exposure: 0.75 }, normalNumbers(7));
  return readPicture(picture, guessedFrames(picture).frames, 'daylight', []);
}

it('a picture that is too dark is refused, with a dilution that can then be read', () => {
  const read = readOf(3);
  if (read.kind !== 'refused' || read.thinBy === undefined) throw new Error('expected to be told how far to thin');
  expect(read.faults.map(({ id }) => id)).toContain('sample too dark');
  const made = { sugarG: 1, totalMl: 100, fold: 2 };
  const { says, made: next } = nextDilution(made, read.thinBy);
  expect(says).toMatch(/^Thin it \d+ fold: 10 mL of it, made up to \d+ mL/);
  expect(readOf((3 * made.fold) / (next?.fold ?? 1)).kind).toBe('told');
});

it('a pale dilution is made stronger: thinned less, or with more sugar, or in a wider glass', () => {
  expect(nextDilution({ sugarG: 1, totalMl: 100, fold: 10 }, 0.2).made).toEqual({ sugarG: 1, totalMl: 100, fold: 2 });
  expect(nextDilution({ sugarG: 1, totalMl: 100, fold: 1 }, 0.3).says).toContain('4 g of the sugar, made up to 100 mL');
  expect(nextDilution({ sugarG: 30, totalMl: 100, fold: 1 }, 0.1).made).toBeUndefined();
});
