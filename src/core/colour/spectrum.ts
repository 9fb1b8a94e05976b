/**
 * Absorption spectra of brown liquids on the grid of `wavelengthsNm`, as decadic absorbance per cm of path.
 * Liquids mix by adding absorbances (Beer-Lambert); colour scales and screens are computed from the sum.
 */
import { stepNm, wavelengthsNm } from './cie.ts';

/** Absorbance per cm at each of `wavelengthsNm`. */
export type Spectrum = Float64Array | readonly number[];

/** Where beer and sugar colour is measured. */
const referenceNm = 430;

/**
 * Ratio of a pigment's absorbance at a wavelength to that at 430 nm: log A falls in a straight line, H/1000 per nm.
 *
 * @param hueIndex Linner's H = 10 log10(A510/A610): 3 (olive) to 7.5 (yellow)
 * Source: Linner 1970, Proc. Soc. Soft Drink Technol., 63-72 (seen quoted); anchored at 430 nm (derived).
 */
export function pigmentShape(nm: number, hueIndex: number): number {
  return 10 ** ((-hueIndex * (nm - referenceNm)) / 1000);
}

/** Spectrum of caramel and melanoidin pigment of a given A430 (per cm) and hue index. See `pigmentShape`. */
export function pigmentAbsorbance(a430PerCm: number, hueIndex: number): Spectrum {
  return wavelengthsNm.map((nm) => a430PerCm * pigmentShape(nm, hueIndex));
}

/**
 * Spectrum of an average beer of a given A430 (per cm).
 *
 * Source: A. J. deLange, "Color", in Brewing Materials and Processes, Elsevier 2016: two exponentials through 99 beers
 * (form seen quoted, constants from memory). Beers of the same A430 differ by dE*ab 4.5 to 17.4 (Koren et al. 2020).
 */
export function averageBeerAbsorbance(a430PerCm: number): Spectrum {
  return wavelengthsNm.map((nm) => {
    const beyond = nm - referenceNm;
    return a430PerCm * (0.02465 * Math.exp(-beyond / 17.591) + 0.97535 * Math.exp(-beyond / 82.122));
  });
}

/** Spectrum of liquids mixed, each given as what it alone would absorb at its strength in the mixture. */
export function mixedAbsorbance(...parts: readonly Spectrum[]): Spectrum {
  return wavelengthsNm.map((_, at) => parts.reduce((sum, part) => sum + (part[at] ?? Number.NaN), 0));
}

/** Absorbance per cm at a wavelength of the grid. */
export function absorbanceAt(spectrum: Spectrum, nm: number): number {
  const value = spectrum[wavelengthsNm.indexOf(nm)];
  if (value === undefined)
    throw new RangeError(`wavelength ${nm} nm is not on the grid of 380 to 780 nm in steps of ${stepNm}`);
  return value;
}

/** Linner's hue index of any spectrum: 10 log10(A510/A610). Source: as `pigmentShape`. */
export function hueIndexOf(spectrum: Spectrum): number {
  return 10 * Math.log10(absorbanceAt(spectrum, 510) / absorbanceAt(spectrum, 610));
}
