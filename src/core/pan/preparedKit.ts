/** What a simulation needs of a kit and does not change from draw to draw: the boiling curve, loss laws and heats, tabulated once. */
import { pressureAtAltitudePa } from '../matter/air.ts';
import { dryEnthalpyJPerKg, dryHeatCapacityJPerKgK } from '../matter/heatCapacity.ts';
import { sucroseSolubilityFraction } from '../matter/solubility.ts';
import { liquidEnthalpyJPerKg, liquidHeatCapacityJPerKgK, steamEnthalpyAtAtmosphericJPerKg } from '../matter/water.ts';
import { type Curves, sampleCurves, slopeOf } from '../reactions/curves.ts';
import { type BoilingCurve, createBoilingCurve } from './boilingCurve.ts';
import { type Kit, type PanMaterial, requireKit, surfaceAreaM2 } from './kit.ts';
import { type LossLaw, lossLaw, sideLossW, surfaceLossW } from './losses.ts';

/** Heat capacity of pan materials, J/(kg K) (from memory). */
const panHeatCapacity: Record<PanMaterial, number> = {
  stainless: 500,
  enamel: 480,
  copper: 385,
  castIron: 460,
  aluminium: 900,
  unknownCoating: 900,
};

export interface PreparedKit {
  readonly kit: Kit;
  readonly curve: BoilingCurve;
  readonly areaM2: number;
  readonly panJPerK: number;
  readonly sideLoss: LossLaw;
  readonly surfaceLoss: LossLaw;
  readonly heats: Curves;
}

/** Places in `heats`: enthalpies above 0 C (J/kg), heat capacities (J/(kg K)), and the solubility of sucrose (mass fraction). */
export const heatOf = { water: 0, steam: 1, waterCapacity: 2, dry: 3, dryCapacity: 4, solubility: 5 } as const;

/** Beyond the law's 100 C solubility is drawn as a straight line to pure molten sucrose at 186 C (assumed). */
function solubility(temperatureC: number): number {
  if (temperatureC <= 100) return sucroseSolubilityFraction(temperatureC);
  const at100 = sucroseSolubilityFraction(100);
  return Math.min(1, at100 + ((1 - at100) * (temperatureC - 100)) / 86);
}

/** Hottest temperature of the tables. */
const hottestC = 200;

function createHeats(): Curves {
  const upTo = (high: number, f: (t: number) => number) => (t: number) => f(Math.min(high, Math.max(0, t)));
  const sampled = (f: (t: number) => number, high = hottestC) => {
    const value = upTo(high, f);
    return { value, slope: slopeOf(value, 0.05) };
  };
  return sampleCurves(
    [
      sampled(liquidEnthalpyJPerKg),
      sampled(steamEnthalpyAtAtmosphericJPerKg),
      sampled(liquidHeatCapacityJPerKgK),
      { value: upTo(hottestC, dryEnthalpyJPerKg), slope: upTo(hottestC, dryHeatCapacityJPerKgK) },
      sampled(dryHeatCapacityJPerKgK),
      sampled(solubility),
    ],
    0,
    hottestC,
    2,
  );
}

/**
 * Tabulates a kit; takes some milliseconds.
 *
 * @throws RangeError naming a number of the kit outside `kitRanges`
 */
export function prepareKit(kit: Kit): PreparedKit {
  requireKit(kit);
  const { pan, roomC } = kit;
  return {
    kit,
    curve: createBoilingCurve(pressureAtAltitudePa(kit.altitudeM)),
    areaM2: surfaceAreaM2(pan),
    panJPerK: pan.massKg * panHeatCapacity[pan.material],
    sideLoss: lossLaw((t) => sideLossW(pan, t, roomC), roomC),
    surfaceLoss: lossLaw((t) => surfaceLossW(pan, t, roomC), roomC),
    heats: createHeats(),
  };
}
