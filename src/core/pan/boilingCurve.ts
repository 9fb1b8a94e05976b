/** The boiling curve of a syrup at one air pressure, tabulated for the inner loop of a simulation. */

import { bindingHeatJPerKg } from '../matter/activity.ts';
import { boilingPointC } from '../matter/boiling.ts';
import { pureSucrose } from '../matter/sugars.ts';
import { boilingPointOfWaterC, saturationPressurePa } from '../matter/water.ts';
import { sampleCurves, slopeOf } from '../reactions/curves.ts';

/** What holds the water: masses of dissolved matter by their power to hold it, kg. */
export interface WaterHolders {
  sucroseKg: number;
  /** Hexoses and what became of them, with 180 g for each mole of ions (assumed, an upper bound). */
  hexoseKg: number;
  maltKg: number;
}

export interface BoilingCurve {
  readonly pressurePa: number;
  readonly waterBoilsC: number;
  /**
   * Boiling temperature, C, of `waterKg` water with the dissolved matter; `theta` shifts between the published tables.
   * Found by Newton's method from `startC`.
   */
  boilsC(waterKg: number, holders: Readonly<WaterHolders>, theta: number, startC: number): number;
  /** How the boiling temperature found last changes with water, K per kg. */
  slopeKPerKg(): number;
  /** Heat that binds water at the last boiling temperature found, J per kg. */
  bindingJPerKg(): number;
}

/** Range of ln(kg water per kg sucrose) that is tabulated: from 0.5 % to 98 % water; drier, the curve goes on as a straight line. */
const lnRatioLow = Math.log(0.0056);
const lnRatioHigh = Math.log(50);

/**
 * Tabulates the curve for one air pressure. Costs some milliseconds: build it once a kit.
 * The equal-activity rule of `matter/activity.ts` then needs one unknown, the temperature.
 */
export function createBoilingCurve(pressurePa: number): BoilingCurve {
  const solids = (lnRatio: number): number => 1 / (1 + Math.exp(lnRatio));
  const boils = (lnRatio: number): number => boilingPointC(solids(lnRatio), pureSucrose, pressurePa);
  const binds = (lnRatio: number): number => bindingHeatJPerKg(solids(lnRatio));
  const margin = 1e-3;
  const curve = sampleCurves(
    [
      { value: boils, slope: slopeOf(boils, margin) },
      {
        value: (x) => slopeOf(boils, margin)(x),
        slope: (x) => (boils(x + 0.02) - 2 * boils(x) + boils(x - 0.02)) / 4e-4,
      },
      { value: binds, slope: slopeOf(binds, margin) },
    ],
    lnRatioLow,
    lnRatioHigh,
    (lnRatioHigh - lnRatioLow) / 120,
  );
  const lnPressure = Math.log(pressurePa);
  const lnVapour = (t: number): number => Math.log(saturationPressurePa(t));
  const vapour = sampleCurves(
    [
      { value: lnVapour, slope: slopeOf(lnVapour, 0.05) },
      { value: slopeOf(lnVapour, 0.05), slope: slopeOf(slopeOf(lnVapour, 0.05), 0.5) },
    ],
    60,
    220,
    4,
  );
  const read = new Float64Array(3);
  const air = new Float64Array(2);
  let slope = 0;

  return {
    pressurePa,
    waterBoilsC: boilingPointOfWaterC(pressurePa),
    slopeKPerKg: () => slope,
    bindingJPerKg: () => read[2],
    boilsC(waterKg, holders, theta, startC) {
      let t = startC;
      for (let i = 0; i < 8; i++) {
        vapour.read(t, air);
        const activity = Math.min(1, Math.exp(lnPressure - air[0]));
        const activitySlope = activity < 1 ? -activity * air[1] : 0;
        const fourth = activity * activity * activity * activity;
        const power = fourth * fourth;
        const held =
          holders.sucroseKg + holders.hexoseKg * (1.32 + 0.58 * power) + holders.maltKg * (0.91 - 0.01 * activity);
        const heldSlope = ((holders.hexoseKg * 4.64 * power) / activity - holders.maltKg * 0.01) * activitySlope;
        const damping = Math.min(1, (1 - activity) / 0.3);
        const dampingSlope = damping < 1 ? -activitySlope / 0.3 : 0;
        const lnRatio = Math.log(waterKg / held) - 0.13 * theta * damping;
        curve.read(lnRatio, read);
        const beyond = Math.min(0, lnRatio - lnRatioLow);
        const error = t - read[0] - read[1] * beyond;
        const dError = 1 + read[1] * (heldSlope / held + 0.13 * theta * dampingSlope);
        const move = error / dError;
        t -= move;
        slope = read[1] / (dError * waterKg);
        // Newton's error is the square of its last move times the bend of the curve, less than 0.02 per K.
        if (Math.abs(move) < 5e-3) break;
      }
      return t;
    },
  };
}
