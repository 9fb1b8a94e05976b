/** The colour of a sugar from a picture of its dilution by a phone that nobody taught, or why the picture can't tell. */
import type { Patch, Region } from '../../core/colour/photo/patch.ts';
import { photoAbsorbance, type Seen } from '../../core/colour/photo/photoAbsorbance.ts';
import { pictureColour, z95 } from '../../core/colour/photo/pictureColour.ts';
import { factorAround } from '../../core/lot/known.ts';
import { colourByPhoto } from '../../core/lot/measure/colour.ts';
import { z90 } from '../../core/lot/measure/estimate.ts';
import type { MadeUp, PhotoSetUp } from '../../core/lot/note.ts';
import type { ColourGiven } from '../colour.ts';
import { Stop } from '../stop.ts';
import { colourText } from './colourText.ts';
import { onEveryScale } from './measuredColour.ts';
import { pictureIn } from './picture/pictureIn.ts';
import { NoPicture } from './picture/pixels.ts';

/** @throws Stop when the picture can't tell, or something that it needs is not told */
export function photographedColour(given: ColourGiven) {
  const { photo, sample, white, setUp } = needed(given);
  const seen = seenIn(photo, sample, white);
  if (seen.kind === 'refused') throw refusal(photo, seen, setUp);
  const { absorbance, sd } = seen;
  const { a430Path, within } = pictureColour(seen, setUp.light, []);
  const reading = { method: 'photo', ...setUp, absorbance, sd, a430Path: a430Path.mid, within, taught: false } as const;
  const { value, readingSd, methodSd } = colourByPhoto(reading, { solids: { value: given.solids, sd: 0 } });
  const lnSd = Math.hypot(readingSd, methodSd);
  const nineInTen = onEveryScale(factorAround(value, (lnSd * z95) / z90), given.solids);
  const { light, paper } = setUp;
  const photoFacts = { light, paper, absorbance, sd, a430Path, ebc: nineInTen.ebc };
  return {
    document: {
      format: 'umberpan-colour-photo-1',
      ...onEveryScale(factorAround(value, lnSd), given.solids),
      photo: photoFacts,
    },
    text: () => `${colourText(nineInTen, '9 in 10')}\n\n${anyPhone(setUp)}`,
  };
}

const lightWords = { daylight: 'daylight', lamp: 'the light of a lamp' } as const;

function anyPhone({ light }: PhotoSetUp): string {
  return `Any phone in ${lightWords[light]} could have taken it. On the Shelf a phone can be taught, and the range gets narrower.`;
}

function needed({ photo, sample, white, sugar, madeUpTo, path, fold, paper, light }: ColourGiven) {
  if (photo === undefined) throw missing('--photo');
  if (sample === undefined) throw missing('--sample');
  if (white === undefined) throw missing('--white');
  if (sugar === undefined) throw missing('--sugar');
  if (madeUpTo === undefined) throw missing('--made-up-to');
  if (path === undefined) throw missing('--path');
  const setUp: PhotoSetUp = { sugarG: sugar, totalMl: madeUpTo, fold, pathCm: path, paper, light };
  return { photo, sample, white, setUp };
}

function missing(field: string): Stop {
  return new Stop({ kind: 'misused', field, message: `${field} is missing: a picture needs it` });
}

function seenIn(photo: string, sample: Region, whites: readonly Region[]): Seen {
  const patch = opened(photo);
  const read = (flag: string, region: Region): Patch => {
    try {
      return patch(region);
    } catch (error) {
      if (!(error instanceof RangeError)) throw error;
      throw new Stop({ kind: 'outsideRange', field: flag, message: `${flag}: ${error.message}` });
    }
  };
  return photoAbsorbance(
    read('--sample', sample),
    whites.map((white) => read('--white', white)),
  );
}

function opened(photo: string): (region: Region) => Patch {
  try {
    return pictureIn(photo);
  } catch (error) {
    if (!(error instanceof NoPicture)) throw error;
    throw new Stop({ kind: 'misused', field: '--photo', value: photo, message: `${photo} ${error.message}` });
  }
}

type Refused = Extract<Seen, { readonly kind: 'refused' }>;

function refusal(photo: string, { faults, thinBy }: Refused, setUp: MadeUp): Stop {
  const reasons = faults.map(({ id, why }) => `- ${id}: ${why}`);
  const next = thinBy === undefined ? [] : [otherDilution(thinBy, setUp)];
  const message = [`${photo}: this picture can't tell.`, ...reasons, ...next].join('\n');
  return new Stop({ kind: 'outsideRange', field: '--photo', value: photo, message });
}

/** In whole folds, which a measuring glass gives. */
function otherDilution(thinBy: number, { fold }: MadeUp): string {
  if (thinBy < 1) return `Make it ${Math.ceil(1 / thinBy)} times as strong, or take a wider glass.`;
  const by = Math.ceil(thinBy);
  const told = Number((fold * by).toPrecision(6));
  return `Thin it ${by} fold: 10 mL of it, made up to ${10 * by} mL with water. Then it is --fold ${told}.`;
}
