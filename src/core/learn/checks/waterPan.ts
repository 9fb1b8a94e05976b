/** A pan of plain water on a ring, below the boil: one temperature for water and pan, losses as of any pan, and drying into room air. */
import { pressureAtAltitudePa } from '../../matter/air.ts';
import { latentHeatJPerKg, liquidHeatCapacityJPerKgK, saturationPressurePa } from '../../matter/water.ts';
import type { Kit } from '../../pan/kit.ts';
import { surfaceAreaM2 } from '../../pan/kit.ts';
import { lossLaw, sideLossW, surfaceLossW } from '../../pan/losses.ts';

export interface WaterPan {
  /** Heat that reaches the pan at the top setting, W. */
  readonly topW: number;
  readonly ringLagS: number;
  readonly lossFactor: number;
  readonly evaporationFactor: number;
  readonly panJPerK: number;
  readonly thermometerLagS: number;
}

/** Water heated once: what was done, and what the thermometer showed. */
export interface HeatingRun {
  readonly waterKg: number;
  /** Water and pan at the beginning, as the thermometer showed it, C. */
  readonly startC: number;
  /** Dial settings and when they were turned to, s, in the order of time. */
  readonly settings: readonly { readonly timeS: number; readonly notch: number }[];
  /** Readings in the order of time, below the boil. */
  readonly readings: readonly { readonly timeS: number; readonly valueC: number }[];
}

/** As in the pan's equations, whose numbers are to be told: mass transfer to air, kg/(m2 s), most vapour at the surface, room vapour, Pa. */
const airSideKgPerM2S = 0.007;
const surfaceVapourLimit = 0.7;
const roomVapourPa = 1250;
const longestStepS = 5;

/** Temperature that a thermometer without offset shows at each reading, C. */
export function heatedWaterC(
  kit: Kit,
  { waterKg, settings, readings }: HeatingRun,
  pan: WaterPan,
  startC: number,
): Float64Array {
  const area = surfaceAreaM2(kit.pan);
  const pressurePa = pressureAtAltitudePa(kit.altitudeM);
  const side = lossLaw((t) => sideLossW(kit.pan, t, kit.roomC), kit.roomC);
  const surface = lossLaw((t) => surfaceLossW(kit.pan, t, kit.roomC), kit.roomC);
  const linear = side.linear + surface.linear;
  const quadratic = side.quadratic + surface.quadratic;
  const shown = new Float64Array(readings.length);
  let water = waterKg;
  let waterC = startC;
  let tipC = startC;
  let ringW = 0;
  let wantedW = 0;
  let timeS = 0;
  let next = 0;

  /** Drying, kg/s. */
  function drying(t: number): number {
    const surface = 1 / (1 / surfaceVapourLimit + pressurePa / saturationPressurePa(Math.max(0, t)));
    const room = Math.min(roomVapourPa / pressurePa, surface);
    return pan.evaporationFactor * area * airSideKgPerM2S * Math.log((1 - room) / (1 - surface));
  }

  function moveTo(toS: number): void {
    while (toS - timeS > 1e-9) {
      const h = Math.min(longestStepS, toS - timeS);
      // Ring and tip go exponentially; the water by the midpoint rule.
      const fade = Math.exp(-h / (2 * pan.ringLagS));
      const middleW = wantedW + (ringW - wantedW) * fade;
      const rate = (t: number): number => {
        const above = t - kit.roomC;
        const lost = pan.lossFactor * above * (linear + quadratic * Math.abs(above));
        const capacity = water * liquidHeatCapacityJPerKgK(t) + pan.panJPerK;
        return (middleW - lost - drying(t) * latentHeatJPerKg(t)) / capacity;
      };
      const middleC = Math.min(99.9, waterC + (h / 2) * rate(waterC));
      const before = waterC;
      waterC = Math.min(99.9, waterC + h * rate(middleC));
      water -= h * drying(middleC);
      // The tip follows a straight line of the water exactly.
      const slope = (waterC - before) / h;
      const behind = slope * pan.thermometerLagS;
      tipC = waterC - behind + (tipC - before + behind) * Math.exp(-h / pan.thermometerLagS);
      ringW = wantedW + (ringW - wantedW) * fade * fade;
      timeS += h;
    }
  }

  readings.forEach((reading, i) => {
    for (; next < settings.length && settings[next].timeS <= reading.timeS; next++) {
      moveTo(settings[next].timeS);
      wantedW = (settings[next].notch / kit.stove.notches) * pan.topW;
    }
    moveTo(reading.timeS);
    shown[i] = tipC;
  });
  return shown;
}
