/** Colour of a depth of syrup, candy or dilution straight from its A430 and hue index: what ribbons, fields and swatches are painted with. */
import { firstNm, stepNm, wavelengthsNm } from './cie.ts';
import { type Lab, labOf } from './lab.ts';
import { pigmentShape } from './spectrum.ts';
import { type Srgb, srgbOf } from './srgb.ts';
import { screenViewing, type Xyz } from './tristimulus.ts';

/**
 * Light through `pathCm` of a liquid with straight-line pigment; equal to `transmittedXyz(pigmentAbsorbance(...), pathCm)`.
 *
 * Along the straight line each 5 nm multiplies the absorbance by the same ratio, which makes this sum over all 81
 * wavelengths about five times as fast as over a stored spectrum, and a table of colours unnecessary.
 *
 * @param a430PerCm absorbance at 430 nm per cm, 0 or more
 * @param pathCm way of the light, cm; over white twice the depth (`passesOverWhite`)
 * @param hueIndex 1 to 12; see `pigmentShape`
 */
export function syrupXyz(a430PerCm: number, pathCm: number, hueIndex: number): Xyz {
  checkInputs(a430PerCm, pathCm, hueIndex);
  const { x: weightX, y: weightY, z: weightZ } = screenViewing.weights;
  const ratio = pigmentShape(firstNm + stepNm, hueIndex) / pigmentShape(firstNm, hueIndex);
  let exponent = -Math.LN10 * a430PerCm * pathCm * pigmentShape(firstNm, hueIndex);
  let x = 0;
  let y = 0;
  let z = 0;
  for (let at = 0; at < wavelengthsNm.length; at++) {
    const transmitted = Math.exp(exponent);
    x += transmitted * (weightX[at] as number);
    y += transmitted * (weightY[at] as number);
    z += transmitted * (weightZ[at] as number);
    exponent *= ratio;
  }
  return { x, y, z };
}

/** What a screen shows for it. Inputs as `syrupXyz`. */
export function syrupColour(a430PerCm: number, pathCm: number, hueIndex: number): Srgb {
  return srgbOf(syrupXyz(a430PerCm, pathCm, hueIndex));
}

/** What the eye compares, also where a screen can't follow. Inputs as `syrupXyz`. */
export function syrupLab(a430PerCm: number, pathCm: number, hueIndex: number): Lab {
  return labOf(syrupXyz(a430PerCm, pathCm, hueIndex));
}

function checkInputs(a430PerCm: number, pathCm: number, hueIndex: number): void {
  if (!(a430PerCm >= 0 && a430PerCm < Infinity)) throw new RangeError(`A430 ${a430PerCm} per cm is not 0 or more`);
  if (!(pathCm >= 0 && pathCm < Infinity)) throw new RangeError(`path ${pathCm} cm is not 0 or more`);
  if (!(hueIndex >= 1 && hueIndex <= 12)) throw new RangeError(`hue index ${hueIndex} is not within 1 to 12`);
}
