/** The note that a picture becomes, and its colour in words with the range that holds nine times in ten. */
import { z95 } from '../../../../../core/colour/photo/pictureColour.ts';
import type { Told } from '../../../../../core/colour/photo/readPicture.ts';
import { ratingA430 } from '../../../../../core/colour/rating.ts';
import type { Beforehand } from '../../../../../core/lot/known.ts';
import { resultOf } from '../../../../../core/lot/measure/resultOf.ts';
import type { Photo, PhotoSetUp } from '../../../../../core/lot/note.ts';
import { ebcOf, span } from '../../../../parts/figures.ts';

export function readingOf(setUp: PhotoSetUp, { kind, a430Path, ...told }: Told): Photo {
  return { method: 'photo', ...setUp, ...told, a430Path: a430Path.mid };
}

export interface ColourWords {
  readonly value: string;
  readonly range: string;
}

/** EBC of a 10 % solution. */
export function colourWords(reading: Photo, known: Beforehand): ColourWords | undefined {
  const result = resultOf(reading, known);
  if (result.kind === 'none') return undefined;
  const { value, readingSd, methodSd } = result.estimate;
  const factor = Math.exp(z95 * Math.hypot(readingSd, methodSd));
  const ebc = (specific430: number) => ebcOf(ratingA430(specific430, 'tenPercentByWeight'));
  return { value: `${ebc(value)} EBC`, range: span({ low: value / factor, mid: value, high: value * factor }, ebc) };
}
