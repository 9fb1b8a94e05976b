/** Colour of a sugar from a dilution: by a photometer, by a picture, or by eye beside computed swatches. Errors are shares of the value (1 sd). */
import { expectedHueIndex } from '../../colour/hueIndex.ts';
import { gammaError } from '../../colour/screen.ts';
import { pigmentShape } from '../../colour/spectrum.ts';
import { passesOverWhite } from '../../colour/tristimulus.ts';
import { requireRange } from '../../matter/range.ts';
import type { Absorbance, Comparison, MadeUp, Photo, PhotoSetUp } from '../note.ts';
import { type Estimate, together } from './estimate.ts';

export interface Dry {
  /** Dry solids of the sugar, mass share, with its error. */
  readonly solids: { readonly value: number; readonly sd: number };
}

/** Melanoidin's share of the pigment where nobody kept it (assumed). */
const usualMaillardShare = 0.5;
/** Kitchen instruments, 1 sd (assumed): zero of a photometer, its scale, a scale of 0.01 g, a volume, the eye with a screen that nobody taught. */
const photometerZero = 0.008;
const photometerScale = 0.02;
const scaleG = 0.01;
const volume = 0.01;
const eyeAndScreen = 0.2;
/** What stays of that when the screen's gamma is known: the eye, the screen's white and its primaries, the light in the room. */
const eyeAndLight = Math.sqrt(eyeAndScreen ** 2 - gammaError.untaught ** 2);
/** Inner width of a glass by a ruler, cm. */
const ruler = 0.1;

/** Strength of a dilution, g of dry sugar in a litre. */
export function dryGPerL({ sugarG, totalMl, fold }: MadeUp, solids: number): number {
  return (1000 * sugarG * solids) / (totalMl * fold);
}

/**
 * Specific absorbance at 430 nm of the dry sugar, L/(g cm), by a photometer.
 *
 * @throws RangeError when the absorbance is one that no kitchen instrument tells apart: below 0.03 or above 2
 * Source: A = ε b c; 420 to 430 nm by Linner's straight line (`core/colour/spectrum.ts`).
 */
export function colourByAbsorbance(told: Absorbance, { solids }: Dry): Estimate {
  const { absorbance, pathCm, wavelengthNm } = told;
  requireRange('absorbance', absorbance, 0.03, 2);
  const at = absorbance / (pathCm * dryGPerL(told, solids.value));
  const hueIndex = expectedHueIndex(at, usualMaillardShare);
  const toReference = pigmentShape(wavelengthNm, hueIndex.mean);
  const stepError = wavelengthNm === 430 ? 0 : Math.LN10 * (hueIndex.sd / 100);
  return {
    value: at / toReference,
    readingSd: together(photometerZero / absorbance, mixingError(told)),
    methodSd: together(photometerScale, stepError, solids.sd / solids.value),
  };
}

/**
 * The same, by eye: the swatch that looked like the dilution. Half a step to either side is as good a match. A taught screen takes little of
 * the error away, 0.200 to 0.176: greys tell nothing of the rest.
 */
export function colourByComparison(told: Comparison, { solids }: Dry): Estimate {
  const { a430PerCm, step, taught } = told;
  return {
    value: a430PerCm / dryGPerL(told, solids.value),
    readingSd: together(Math.log(step) / Math.sqrt(12), mixingError(told)),
    methodSd: together(eyeAndLight, taught ? gammaError.taught : gammaError.untaught, solids.sd / solids.value),
  };
}

/** Length of all that the light passes on its way to the camera, cm. */
export function lightPathCm({ pathCm, paper }: Pick<PhotoSetUp, 'pathCm' | 'paper'>): number {
  return paper === 'below' ? passesOverWhite * pathCm : pathCm;
}

/** The same, by a picture: what its channels came to is known no better than the phone's camera is. */
export function colourByPhoto(told: Photo, { solids }: Dry): Estimate {
  return {
    value: told.a430Path / (lightPathCm(told) * dryGPerL(told, solids.value)),
    readingSd: mixingError(told),
    methodSd: together(told.within, ruler / told.pathCm, solids.sd / solids.value),
  };
}

/** What a dilution of known colour teaches of a phone: its absorbance at 430 nm over the light's path, and the error of that as a share. */
export interface KnownDilution {
  readonly a430Path: number;
  readonly knownWithin: number;
}

/** @param a430 of the dilution itself in 1 cm, by a photometer. @throws RangeError as `colourByAbsorbance` */
export function dilutionByPhotometer(setUp: PhotoSetUp, a430: number): KnownDilution {
  requireRange('absorbance', a430, 0.03, 2);
  return {
    a430Path: a430 * lightPathCm(setUp),
    knownWithin: together(photometerZero / a430, photometerScale, ruler / setUp.pathCm),
  };
}

/** @param specific430 of the dry sugar, L/(g cm), with its error as a share (1 sd) */
export function dilutionOfKnown(
  setUp: PhotoSetUp,
  specific430: { readonly value: number; readonly sd: number },
  { solids }: Dry,
): KnownDilution {
  return {
    a430Path: specific430.value * dryGPerL(setUp, solids.value) * lightPathCm(setUp),
    knownWithin: together(specific430.sd, mixingError(setUp), ruler / setUp.pathCm),
  };
}

function mixingError({ sugarG, fold }: MadeUp): number {
  return together(scaleG / sugarG, volume, fold > 1 ? volume * Math.SQRT2 : 0);
}
