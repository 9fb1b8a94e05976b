/**
 * Colour scales of beer and sugar, all from absorbance. Inside the program a sugar's colour is its *specific absorbance*:
 * absorbance at 430 nm per cm for each gram in a litre of solution, L/(g cm), per gram of sugar as it is.
 */
import { pigmentShape } from './spectrum.ts';

/** Analytica-EBC 9.6 (beer), 8.5 (wort): EBC = 25 A430 in 1 cm (seen quoted). */
const ebcPerA430 = 25;
/** ASBC Methods of Analysis, Beer-10A: 10 A430 in a half-inch cell (seen quoted). */
const srmPerA430 = 12.7;

export function ebcFromA430(a430PerCm: number): number {
  return ebcPerA430 * a430PerCm;
}

export function a430FromEbc(ebc: number): number {
  return ebc / ebcPerA430;
}

export function srmFromA430(a430PerCm: number): number {
  return srmPerA430 * a430PerCm;
}

export function a430FromSrm(srm: number): number {
  return srm / srmPerA430;
}

export function ebcFromSrm(srm: number): number {
  return ebcFromA430(a430FromSrm(srm));
}

export function srmFromEbc(ebc: number): number {
  return srmFromA430(a430FromEbc(ebc));
}

/** A beer's A430 per cm from dissolved sugar alone: a specific absorbance, L/(g cm), at a strength in g/L. Adds to what the beer has. */
export function a430FromSpecific(specificAbsorbance: number, gramsPerLitre: number): number {
  return specificAbsorbance * gramsPerLitre;
}

/**
 * ICUMSA colour (IU) at 420 nm: 1000 A/(b c), c in g of dry solids per mL.
 *
 * @param specificAbsorbance at 430 nm, L/(g cm), **per gram of dry solids**
 * @param hueIndex gives A420/A430 = 10^(H/100)
 * The method measures at pH 7; the acid of beer pales some of this colour (from memory), so take it as good to 10 %.
 * Source: ICUMSA GS1/3-7, GS2/3-10 (seen quoted); step from 430 to 420 nm derived.
 */
export function icumsaFromSpecific(specificAbsorbance: number, hueIndex: number): number {
  return 1e6 * specificAbsorbance * pigmentShape(420, hueIndex);
}

/** Inverse of `icumsaFromSpecific`: L/(g cm) at 430 nm per gram of dry solids. */
export function specificFromIcumsa(icumsa: number, hueIndex: number): number {
  return icumsa / (1e6 * pigmentShape(420, hueIndex));
}

/** Colour units of the Institute of Brewing, 1000 A530; obsolete (seen quoted). */
export function iobFromA530(a530PerCm: number): number {
  return 1000 * a530PerCm;
}

/**
 * SRM from degrees Lovibond, the maltsters' comparator scale.
 *
 * Regression on pairs that maltsters printed; below about 3 L the two are taken as equal (seen quoted). Many firms print
 * one for the other: ask which is meant.
 */
export function srmFromLovibond(degreesLovibond: number): number {
  return Math.max(1.3546 * degreesLovibond - 0.76, degreesLovibond);
}

/**
 * The trade's empirical beer colour: SRM = 1.4922 MCU^0.6859, up to 50 SRM.
 *
 * @param mcu malt colour units: pounds times degrees Lovibond per US gallon, summed (metric: kg L/L times 8.345)
 * Fitted to malt grists (Morey, letter to a brewing periodical, mid-1990s; seen quoted). A clear sugar follows Beer-Lambert
 * instead, so this stands beside the computed colour and never replaces it.
 */
export function moreySrm(mcu: number): number {
  return 1.4922 * mcu ** 0.6859;
}
