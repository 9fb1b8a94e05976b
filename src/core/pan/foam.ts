/** How high the foam of a boiling syrup stands. */

/** Steam at about 1 atm, kg/m3. */
const steamKgPerM3 = 0.58;
/** Foam stands at two to four times the quiet depth in practice (common practice, no source). */
const mostRise = 4;
/** Speed of steam through the surface at which half of that rise is reached, m/s (assumed). */
const halfRiseMPerS = 0.01;

/**
 * Height of syrup and foam above the pan's bottom, m.
 *
 * @param depthM depth of the quiet syrup
 * @param steamKgPerS steam leaving; infinite for the worst case
 * @param areaM2 surface of the syrup
 * A rough law: from the quiet depth without steam to four times it in a rolling boil; malt extract and alkali make more (not modelled).
 */
export function foamHeightM(depthM: number, steamKgPerS: number, areaM2: number): number {
  const speed = steamKgPerS / (steamKgPerM3 * areaM2);
  const share = speed === Number.POSITIVE_INFINITY ? 1 : speed / (speed + halfRiseMPerS);
  return depthM * (1 + (mostRise - 1) * share);
}
