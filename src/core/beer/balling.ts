/**
 * Attenuation and alcohol. Extracts in degrees Plato, alcohol in per cent by weight, attenuations as shares of one.
 * Balling 1843-65: 2.0665 g of extract give 1 g of ethanol, 0.9565 g of carbon dioxide and 0.11 g of yeast (the first seen, the others
 * from memory); as in Speers, Brewing Calculations (MBAA).
 */
export const extractPerAlcohol = 2.0665;
/** Carbon dioxide and yeast that leave the beer for each gram of alcohol. */
const leavesPerAlcohol = 1.0665;
export const carbonDioxidePerAlcohol = 0.9565;

/** Share of the original extract in the real extract; de Clerck's form (from memory, recurs in seen texts). */
const originalShare = 0.1808;
/** Density of water and of ethanol at 20 C, kg/L (from memory). */
const abvDivisor = 0.78924 / 0.998203;

/** Real extract from original and apparent extract. */
export function realExtract(originalPlato: number, apparentPlato: number): number {
  return originalShare * originalPlato + (1 - originalShare) * apparentPlato;
}

/** Apparent extract, negative in a dry beer: the inverse of `realExtract`. */
export function apparentExtract(originalPlato: number, realPlato: number): number {
  return (realPlato - originalShare * originalPlato) / (1 - originalShare);
}

/** Alcohol, per cent by weight: (OE - RE)/(2.0665 - 0.010665 OE). */
export function alcoholByWeight(originalPlato: number, realPlato: number): number {
  return (originalPlato - realPlato) / (extractPerAlcohol - (leavesPerAlcohol / 100) * originalPlato);
}

/** Original extract from alcohol (per cent by weight) and real extract: 100 (2.0665 A + RE)/(100 + 1.0665 A). */
export function originalExtract(alcohol: number, realPlato: number): number {
  return (100 * (extractPerAlcohol * alcohol + realPlato)) / (100 + leavesPerAlcohol * alcohol);
}

/** Alcohol in per cent by volume at 20 C. */
export function alcoholByVolume(byWeight: number, finalGravity: number): number {
  return (byWeight * finalGravity) / abvDivisor;
}

/** Share of the extract's mass that was fermented: ASBC Beer-6B, RDF = (OE - RE)/OE/(1 - 0.005161 RE). */
export function realAttenuation(originalPlato: number, realPlato: number): number {
  return originalPlato > 0 ? (originalPlato - realPlato) / originalPlato / (1 - 0.005161 * realPlato) : 0;
}

export function apparentAttenuation(originalPlato: number, apparentPlato: number): number {
  return originalPlato > 0 ? (originalPlato - apparentPlato) / originalPlato : 0;
}

/** The same by Balling's balance, from which the constant of Beer-6B comes (0.010665/2.0665). */
export function fermentedShare(originalPlato: number, realPlato: number): number {
  if (originalPlato <= 0) return 0;
  const fermented = extractPerAlcohol * alcoholByWeight(originalPlato, realPlato);
  return fermented / (fermented + realPlato);
}

/**
 * Alcohol by weight from a regression on 532 brews: A = (0.372 + 0.00357 OE)(OE - AE), standard error 0.010.
 * Source: Cutaia, Reid & Speers 2009, J. Inst. Brew. 115:318, table VI (seen in a transcription).
 */
export function alcoholByRegression(originalPlato: number, apparentPlato: number): number {
  return (0.372 + 0.00357 * originalPlato) * (originalPlato - apparentPlato);
}

/** Energy of 100 g of beer, kcal: 6.9 A + 4.0 (RE - ash), ash 0.1; ASBC Beer-33 (from memory). */
export function kcalPer100g(byWeight: number, realPlato: number): number {
  return 6.9 * byWeight + 4 * Math.max(0, realPlato - 0.1);
}
