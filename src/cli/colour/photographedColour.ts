/** The colour of a sugar from a picture of its dilution by a phone that nobody taught, or why the picture can't tell. */
import type { Patch, Region } from '../../core/colour/photo/patch.ts';
import { z95 } from '../../core/colour/photo/pictureColour.ts';
import { type Refused, readPatches } from '../../core/colour/photo/readPicture.ts';
import { factorAround } from '../../core/lot/known.ts';
import { colourByPhoto } from '../../core/lot/measure/colour.ts';
import { z90 } from '../../core/lot/measure/estimate.ts';
import { nextDilution } from '../../core/lot/measure/nextDilution.ts';
import type { MadeUp, PhotoSetUp } from '../../core/lot/note.ts';
import type { ColourGiven } from '../colour.ts';
import { Stop } from '../stop.ts';
import { colourText } from './colourText.ts';
import { onEveryScale } from './measuredColour.ts';
import { type OpenPicture, pictureIn } from './picture/pictureIn.ts';
import { NoPicture } from './picture/pixels.ts';

interface Regions {
  readonly sample: Region;
  readonly whites: readonly Region[];
}

/** @throws Stop when the picture can't tell, or something that it needs is not told */
export async function photographedColour(given: ColourGiven) {
  const { photo, told, setUp } = needed(given);
  const picture = await opened(photo);
  const regions = told ?? found(photo, picture);
  const read = readIn(picture, regions, setUp);
  if (read.kind === 'refused') throw refusal(photo, read, setUp);
  const { kind, a430Path, ...facts } = read;
  const reading = { method: 'photo', ...setUp, ...facts, a430Path: a430Path.mid } as const;
  const { value, readingSd, methodSd } = colourByPhoto(reading, { solids: { value: given.solids, sd: 0 } });
  const lnSd = Math.hypot(readingSd, methodSd);
  const nineInTen = onEveryScale(factorAround(value, (lnSd * z95) / z90), given.solids);
  const { light, paper } = setUp;
  const { absorbance, sd } = read;
  return {
    document: {
      format: 'umberpan-colour-photo-1',
      ...onEveryScale(factorAround(value, lnSd), given.solids),
      photo: { light, paper, regions, absorbance, sd, a430Path, ebc: nineInTen.ebc },
    },
    text: () => `${colourText(nineInTen, '9 in 10')}\n\n${told ? '' : `${placesText(regions)}\n`}${anyPhone(setUp)}`,
  };
}

const lightWords = { daylight: 'daylight', lamp: 'the light of a lamp' } as const;

function anyPhone({ light }: PhotoSetUp): string {
  return `Any phone in ${lightWords[light]} could have taken it. On the Shelf a phone can be taught, and the range gets narrower.`;
}

/** To be looked at: nobody else did. */
function placesText({ sample, whites }: Regions): string {
  const flags = [`--sample ${regionText(sample)}`, ...whites.map((white) => `--white ${regionText(white)}`)];
  return `Found and read: ${flags.join(' ')}. Where that is wrong, say so by these.`;
}

const regionText = ({ left, top, width, height }: Region): string => `${left},${top},${width},${height}`;

function needed({ photo, sample, white, sugar, madeUpTo, path, fold, paper, light }: ColourGiven) {
  if (photo === undefined) throw missing('--photo', 'a picture needs it');
  if (sugar === undefined) throw missing('--sugar', 'a picture needs it');
  if (madeUpTo === undefined) throw missing('--made-up-to', 'a picture needs it');
  if (path === undefined) throw missing('--path', 'a picture needs it');
  if (sample && !white) throw missing('--white', 'tell both regions, or neither to have them found');
  if (white && !sample) throw missing('--sample', 'tell both regions, or neither to have them found');
  const setUp: PhotoSetUp = { sugarG: sugar, totalMl: madeUpTo, fold, pathCm: path, paper, light };
  const told: Regions | undefined = sample && white && { sample, whites: white };
  return { photo, told, setUp };
}

function missing(field: string, why: string): Stop {
  return new Stop({ kind: 'misused', field, message: `${field} is missing: ${why}` });
}

function found(photo: string, picture: OpenPicture): Regions {
  const { frames, found } = picture.guess();
  if (found) return { sample: frames.sample, whites: [frames.white1, frames.white2] };
  const message = `${photo}: no dilution with white to either side was found in it; tell where they are by --sample and --white`;
  throw new Stop({ kind: 'outsideRange', field: '--photo', value: photo, message });
}

function readIn(picture: OpenPicture, { sample, whites }: Regions, { light }: PhotoSetUp) {
  const patch = (flag: string, region: Region): Patch => {
    try {
      return picture.patch(region);
    } catch (error) {
      if (!(error instanceof RangeError)) throw error;
      throw new Stop({ kind: 'outsideRange', field: flag, message: `${flag}: ${error.message}` });
    }
  };
  const seen = whites.map((white) => patch('--white', white));
  return readPatches(patch('--sample', sample), seen, light, []);
}

async function opened(photo: string): Promise<OpenPicture> {
  try {
    return await pictureIn(photo);
  } catch (error) {
    if (!(error instanceof NoPicture)) throw error;
    throw new Stop({ kind: 'misused', field: '--photo', value: photo, message: `${photo} ${error.message}` });
  }
}

function refusal(photo: string, { faults, thinBy }: Refused, setUp: MadeUp): Stop {
  const reasons = faults.map(({ id, why }) => `- ${id}: ${why}`);
  const next = thinBy === undefined ? [] : [otherDilution(thinBy, setUp)];
  const message = [`${photo}: this picture can't tell.`, ...reasons, ...next].join('\n');
  return new Stop({ kind: 'outsideRange', field: '--photo', value: photo, message });
}

function otherDilution(thinBy: number, setUp: MadeUp): string {
  const { says, made } = nextDilution(setUp, thinBy);
  if (!made) return says;
  return `${says} Then it is --sugar ${made.sugarG}g --made-up-to ${made.totalMl}mL --fold ${made.fold}.`;
}
