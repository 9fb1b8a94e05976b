/** Does the batch fit the pan: depth, foam, and whether the probe's tip is covered. */
import { limits } from '../advice/limits.ts';
import { foamHeightM } from '../pan/foam.ts';
import { type PanVessel, surfaceAreaM2 } from '../pan/kit.ts';
import type { Charge } from '../pan/steps.ts';

/** Density of the hot syrup, kg/m3 (assumed). */
const hotSyrupKgPerM3 = 1350;
/** A probe's tip wants this much syrup around it, m (assumed). */
const probeDepthM = 0.015;

export interface PanFit {
  /** Depth of the quiet syrup, to the nearest millimetre, and height of the foam, to the next, m: all that is said of them goes by these. */
  readonly depthM: number;
  readonly foamM: number;
  /** Share of the pan's height that the quiet syrup fills. */
  readonly fill: number;
  readonly foamStaysIn: boolean;
  readonly probeCovered: boolean;
  /** The most sugar, weighed in, that this pan takes by the fill rule, kg. */
  readonly mostSugarKg: number;
}

/** All that the pan is filled with, kg. */
export function contentsOf({ sucroseKg, waterKg, maltExtractKg }: Charge): number {
  return sucroseKg + waterKg + maltExtractKg;
}

/** @param steamKgPerS the most steam expected; left out: the worst case */
export function panFit(
  pan: PanVessel,
  contentsKg: number,
  sucroseKg: number,
  steamKgPerS = Number.POSITIVE_INFINITY,
): PanFit {
  const area = surfaceAreaM2(pan);
  const exactDepthM = contentsKg / (hotSyrupKgPerM3 * area);
  const depthM = Math.round(exactDepthM * 1000) / 1000;
  const foamM = Math.ceil(foamHeightM(exactDepthM, steamKgPerS, area) * 1000) / 1000;
  const most = (limits.fillWithDosing.value * pan.heightM * area * hotSyrupKgPerM3 * sucroseKg) / contentsKg;
  return {
    depthM,
    foamM,
    fill: exactDepthM / pan.heightM,
    foamStaysIn: foamM <= pan.heightM,
    probeCovered: depthM >= probeDepthM,
    mostSugarKg: most,
  };
}
