/**
 * From an absorption spectrum to CIE XYZ of the light that comes through a depth of liquid.
 * Equations: CIE 015:2018, section 7 (sums over the grid); T = 10^(-A b), Bouguer-Lambert.
 */
import { illuminantC, illuminantD65, type Observer, observer2Degree, observer10Degree } from './cie.ts';
import type { Spectrum } from './spectrum.ts';

/** Tristimulus values; the white of the illuminant has Y = 100. */
export interface Xyz {
  readonly x: number;
  readonly y: number;
  readonly z: number;
}

/** An illuminant seen by an observer: weights of each wavelength, and what full transmission looks like. */
export interface Viewing {
  readonly weights: Observer;
  readonly white: Xyz;
}

function viewing(illuminant: readonly number[], observer: Observer): Viewing {
  const scale = 100 / illuminant.reduce((sum, power, at) => sum + power * (observer.y[at] ?? 0), 0);
  const weigh = (sensitivity: readonly number[]) => sensitivity.map((each, at) => each * (illuminant[at] ?? 0) * scale);
  const weights = { x: weigh(observer.x), y: weigh(observer.y), z: weigh(observer.z) };
  const total = (values: readonly number[]) => values.reduce((sum, each) => sum + each, 0);
  return { weights, white: { x: total(weights.x), y: total(weights.y), z: total(weights.z) } };
}

/** Daylight seen as screens assume: D65, 2 degrees. */
export const screenViewing = viewing(illuminantD65, observer2Degree);
/** How brewing laboratories report tristimulus colour: illuminant C, 10 degrees (ASBC Beer-10C, seen quoted). */
export const laboratoryViewing = viewing(illuminantC, observer10Degree);

/** Light over a white plate or paper passes the liquid twice: down and back up. */
export const passesOverWhite = 2;

/**
 * Colour of light that has passed `pathCm` of a clear liquid. For a pool or drop over white give `passesOverWhite * depth`.
 *
 * @param absorbancePerCm spectrum of the liquid, see `Spectrum`
 * @param pathCm 0 or more, cm
 */
export function transmittedXyz(absorbancePerCm: Spectrum, pathCm: number, { weights }: Viewing = screenViewing): Xyz {
  if (!(pathCm >= 0)) throw new RangeError(`path ${pathCm} cm is not 0 or more`);
  let x = 0;
  let y = 0;
  let z = 0;
  for (let at = 0; at < weights.y.length; at++) {
    const transmitted = Math.exp(-Math.LN10 * pathCm * (absorbancePerCm[at] as number));
    x += transmitted * (weights.x[at] as number);
    y += transmitted * (weights.y[at] as number);
    z += transmitted * (weights.z[at] as number);
  }
  return { x, y, z };
}
