/** How much sucrose water dissolves. */
import { requireRange } from './range.ts';

/**
 * Sucrose in a saturated solution.
 *
 * @param temperatureC -13 to 100 C
 * @returns mass fraction of sucrose; the older Herzfeld table lies within 0.4 %
 * @throws RangeError outside the range
 * Source: Vavrinecz 1962, as ICUMSA SPS-2 (seen as a transcription).
 */
export function sucroseSolubilityFraction(temperatureC: number): number {
  requireRange('temperature (C)', temperatureC, -13, 100);
  const t = temperatureC;
  return (64.447 + t * (0.08222 + t * (1.6169e-3 + t * (-1.558e-6 - t * 4.63e-8)))) / 100;
}
