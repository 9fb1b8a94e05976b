/**
 * The pan as a system of differential equations: heat from ring to pan to syrup, boiling and quiet evaporation, dissolving, mixing
 * of alkali, a thermometer with lag, and the reactions.
 */

import type { Values } from '../reactions/parameter.ts';
import type { ReactionParameter } from '../reactions/parameters.ts';
import {
  amount,
  amountMassKg,
  createRates,
  type Rates,
  type ReactionFlow,
  type Surroundings,
  waterMassKg,
} from '../reactions/rates.ts';
import type { WaterHolders } from './boilingCurve.ts';
import type { KitParameter } from './kitParameters.ts';
import type { LossLaw } from './losses.ts';
import { heatOf, type PreparedKit } from './preparedKit.ts';
import type { System } from './rosenbrock.ts';
import { dissolvedKg, movingCount, place, stateSize } from './state.ts';
import { createStiffBlock } from './stiffBlock.ts';

export type ModelParameter = ReactionParameter | KitParameter;
export type ModelValues = Values<ModelParameter>;

/** Dissolving sugar takes heat: 16 kJ/kg at 25 C in much water (from memory) to 55 hot and strong (seen in a transcription). */
const dissolvingJPerKg = 30e3;
/** Inversion sets heat free: Tombari et al. 2007, J. Phys. Chem. B 111:496, 14.4 kJ/mol at 37 C (seen). */
const inversionJPerMol = 14.4e3;
/** Base against acids frees 56 kJ/eq, against sugar hydroxyls about 23 (from memory); in the pan both happen. */
const neutralisingJPerEq = 45e3;
/** Mass transfer to air, kg/(m2 s) for one unit of ln((P - room)/(P - surface)): Chilton-Colburn with h = 10 W/(m2 K) (derived). */
const airSideKgPerM2S = 0.007;
/** Close below the boil the logarithm runs away; the surface's vapour is taken to reach no more than this share of air pressure (assumed). */
const surfaceVapourLimit = 0.7;
/** Water vapour in room air, Pa (about 50 % at 21 C). */
const roomVapourPa = 1250;
const syrupDensity = 1380;
/** Width over which boiling sets in, K (assumed; keeps the equations smooth). */
const boilOnsetK = 0.4;
/** A mole of ions holds water like 180 g of hexose (assumed, an upper bound). */
const ionHexoseKg = 0.18;

/** Share of saturation over which dissolving slows down (assumed). */
const nearSaturation = 0.1;
/** Less water than this is not told apart from none, kg. */
const driestKg = 1e-6;
/** Water at which steam is down to half for want of water, kg (a hundredth of a gram). */
const traceKg = 1e-5;

/** Diffusion of water in hot syrup: 5e-10 m2/s at 7 % water, rising with water to 30 % (assumed). */
const diffusionAt7PercentM2PerS = 5e-10;
const diffusionRise = 12;

/** Heat lost by a law, times a factor, W. */
function lossW(law: LossLaw, factor: number, aboveRoomK: number): number {
  return factor * aboveRoomK * (law.linear + law.quadratic * aboveRoomK);
}

/** Slope of the same, W/K. */
function lossSlope(law: LossLaw, factor: number, aboveRoomK: number): number {
  return factor * (law.linear + 2 * law.quadratic * aboveRoomK);
}

/** What the last evaluation found beside the derivatives. */
export interface PanView {
  temperatureC: number;
  boilsC: number;
  /** Steam leaving, kg/s: by boiling, and in all. */
  boilingKgPerS: number;
  steamKgPerS: number;
  /** Warming of the syrup, K/s. */
  warmingKPerS: number;
  ph: number;
}

export interface Pan extends System {
  readonly values: ModelValues;
  /** Heat that the ring is set to give to the pan, W. */
  setRingW(watts: number): void;
  /** Left by the last evaluation of the derivatives. */
  readonly view: Readonly<PanView>;
}

/** Typical sizes of the moving values for a batch of about a kilogram; errors are judged against them. */
function scaleOf(): Float64Array {
  const scale = new Float64Array(stateSize).fill(0.05);
  scale[place.boundAmine] = scale[place.amine] = scale[place.amadori] = scale[place.prepigment] = 5e-4;
  scale[place.melanoidin] = scale[place.hmf] = 2e-3;
  scale[place.caramel] = scale[place.fragments] = scale[place.colourless] = scale[place.acid] = 1e-2;
  scale[place.base] = scale[place.caustic] = scale[place.lime] = 2e-2;
  scale[place.sucrose] = scale[place.crystals] = 1;
  // A roast ends with some 5 g of water, which set its temperature.
  scale[place.waterKg] = 0.005;
  scale[place.enthalpyJ] = 1e5;
  scale[place.panC] = scale[place.tipC] = 50;
  scale[place.burnerW] = 300;
  scale[place.steamKg] = 0.1;
  scale[place.heatInJ] = scale[place.lostJ] = scale[place.steamJ] = scale[place.reactionJ] = 1e6;
  return scale;
}

/** Builds the equations for one kit and one set of parameter values; the rates, costly to tabulate, may be kept from a former one. */
export function createPan(prepared: PreparedKit, values: ModelValues, rates: Rates = createRates(values)): Pan {
  const { curve, areaM2, panJPerK, sideLoss, surfaceLoss, heats, kit } = prepared;
  const heat = new Float64Array(heats.count);
  const holders: WaterHolders = { sucroseKg: 0, hexoseKg: 0, maltKg: 0 };
  const around: Surroundings = { temperatureC: 20, syrupKg: 1, waterKg: 1, base: 0, citricMol: 0, maltKg: 0 };
  const flow: ReactionFlow = { water: 0, inverted: 0 };
  const view: PanView = { temperatureC: 20, boilsC: 100, boilingKgPerS: 0, steamKgPerS: 0, warmingKPerS: 0, ph: 5.5 };
  const boilW = values.boilConductance * areaM2;
  const thinFilmW = values.thinFilm * areaM2;
  const lnFilmRatio = Math.log(values.thickFilm / values.thinFilm);
  const airW = values.evaporationFactor * airSideKgPerM2S * areaM2;
  const roomShare = roomVapourPa / curve.pressurePa;
  // Penetration theory (Higbie 1935): 2 sqrt(D / (pi t)), here for D at 7 % water.
  const renewal = 2 * Math.sqrt(diffusionAt7PercentM2PerS / (Math.PI * values.surfaceRenewalS)) * syrupDensity * areaM2;
  let ringW = 0;
  // Left by `evaluate` for the linearisation and for the next first guesses; an object, since it is written in the inner loop.
  const found = {
    heatsAtC: 20.5,
    boilsAtKg: 0.5,
    boilSlope: 0.5,
    binding: 0.5,
    dry: 0.5,
    filmW: 0.5,
    capacity: 0.5,
    boilShare: 0.5,
  };
  heats.read(found.heatsAtC, heat);

  /** Temperature from heat content, by Newton's method from where the heats were read last. */
  function settle(y: Float64Array): void {
    const dry = dissolvedKg(y);
    const solids = dry + y[place.crystals] * amountMassKg[amount.sucrose];
    const water = y[place.waterKg];
    for (let i = 0; i < 12; i++) {
      found.capacity = water * heat[heatOf.waterCapacity] + solids * heat[heatOf.dryCapacity];
      const excess = water * heat[heatOf.water] + solids * heat[heatOf.dry] - y[place.enthalpyJ];
      const t = Math.min(200, Math.max(0, found.heatsAtC - excess / found.capacity));
      view.temperatureC = t;
      if (Math.abs(t - found.heatsAtC) < 1e-4) break;
      found.heatsAtC = Number.isFinite(t) ? t : 100;
      heats.read(found.heatsAtC, heat);
    }
    found.dry = dry;
  }

  /** The part of the dissolved matter that holds water like hexose: everything but sucrose and malt extract. */
  function findBoil(y: Float64Array, water: number): void {
    holders.sucroseKg = y[place.sucrose] * amountMassKg[amount.sucrose];
    holders.maltKg = y[place.maltKg];
    holders.hexoseKg =
      found.dry - holders.sucroseKg - holders.maltKg - y[place.mineralKg] + ionHexoseKg * y[place.base];
    const guessC = view.boilsC + found.boilSlope * (water - found.boilsAtKg);
    view.boilsC = curve.boilsC(water, holders, values.boilingTheta, Number.isFinite(guessC) ? guessC : 120);
    found.boilSlope = curve.slopeKPerKg();
    found.binding = curve.bindingJPerKg();
    found.boilsAtKg = water;
  }

  /** Steam by diffusion through the surface and the air above it, kg/s. */
  function quietSteam(waterShare: number, latent: number): number {
    const kelvin = view.temperatureC + 273.15;
    const exponent =
      (((latent + found.binding) * waterMassKg) / 8.314462618) * (1 / (view.boilsC + 273.15) - 1 / kelvin);
    const surface = surfaceVapourLimit / (1 + surfaceVapourLimit * Math.exp(-exponent));
    const air = airW * Math.log((1 - Math.min(roomShare, surface)) / (1 - surface));
    const liquid = renewal * Math.exp(0.5 * diffusionRise * (Math.min(waterShare, 0.3) - 0.07)) * waterShare;
    return (air * liquid) / (air + liquid);
  }

  function evaluate(y: Float64Array, dy: Float64Array): void {
    const water = Math.max(y[place.waterKg], driestKg);
    settle(y);
    findBoil(y, water);
    const t = view.temperatureC;
    const syrup = found.dry + water;
    const waterShare = water / syrup;
    const latent = heat[heatOf.steam] - heat[heatOf.water];

    around.temperatureC = t;
    around.syrupKg = syrup;
    around.waterKg = water;
    around.base = y[place.base];
    around.citricMol = y[place.citricMol];
    around.maltKg = y[place.maltKg];
    view.ph = rates.derivatives(y, around, dy, flow);

    // Boiling: proportional to superheat, setting in smoothly.
    const above = t - view.boilsC;
    const root = Math.sqrt(above * above + boilOnsetK * boilOnsetK);
    const superheat = 0.5 * (above + root);
    found.boilShare = 0.5 * (1 + above / root);
    // What is not there can't leave: boiling sets in so smoothly that it would go on a little without water.
    const present = Math.max(0, y[place.waterKg]);
    const available = present / (present + traceKg);
    const boiling = (available * boilW * superheat) / (latent + found.binding);
    const steam = boiling + available * quietSteam(waterShare, latent);
    view.boilingKgPerS = boiling;
    view.steamKgPerS = steam;

    // Film between pan and syrup: falls from thin to thick between 80 and 96 % solids.
    const s = Math.min(1, Math.max(0, (0.2 - waterShare) / 0.16));
    found.filmW = thinFilmW * Math.exp(lnFilmRatio * s * s * (3 - 2 * s));
    const toSyrup = found.filmW * (y[place.panC] - t);
    const sideLost = lossW(sideLoss, values.lossFactor, y[place.panC] - kit.roomC);
    const surfaceLost = lossW(surfaceLoss, values.lossFactor, t - kit.roomC);
    const steamHeat = steam * (heat[heatOf.steam] + found.binding);

    // Dissolving: at full speed until close below saturation, then slowing.
    const crystals = y[place.crystals];
    const sucroseShare = holders.sucroseKg / (holders.sucroseKg + water);
    const room = Math.max(0, 1 - sucroseShare / heat[heatOf.solubility]) / nearSaturation;
    const dissolving = crystals > 0 ? (crystals * Math.min(1, room)) / values.dissolvingS : 0;
    const caustic = y[place.caustic] / values.causticMixingS;
    const lime = y[place.lime] / values.limeReleaseS;
    const reactionHeat =
      inversionJPerMol * flow.inverted +
      neutralisingJPerEq * (caustic + lime) -
      dissolvingJPerKg * dissolving * amountMassKg[amount.sucrose];

    dy[place.sucrose] += dissolving;
    dy[place.crystals] = -dissolving;
    dy[place.base] = caustic + lime;
    dy[place.caustic] = -caustic;
    dy[place.lime] = -lime;
    dy[place.waterKg] = waterMassKg * flow.water - steam;
    dy[place.enthalpyJ] = toSyrup - surfaceLost - steamHeat + reactionHeat;
    view.warmingKPerS =
      (dy[place.enthalpyJ] - heat[heatOf.water] * dy[place.waterKg] + heat[heatOf.dry] * waterMassKg * flow.water) /
      found.capacity;
    dy[place.panC] = (y[place.burnerW] - toSyrup - sideLost) / panJPerK;
    dy[place.burnerW] = (ringW - y[place.burnerW]) / values.stoveLagS;
    dy[place.tipC] = (t - y[place.tipC]) / values.thermometerLagS;
    dy[place.steamKg] = steam;
    dy[place.heatInJ] = y[place.burnerW];
    dy[place.lostJ] = sideLost + surfaceLost;
    dy[place.steamJ] = steamHeat;
    dy[place.reactionJ] = reactionHeat;
  }

  const block = createStiffBlock({
    ringRate: 1 / values.stoveLagS,
    tipRate: 1 / values.thermometerLagS,
    causticRate: 1 / values.causticMixingS,
    limeRate: 1 / values.limeReleaseS,
    panJPerK,
    capacityJPerK: 1,
    waterJPerKg: 0,
    steamJPerKg: 0,
    filmWPerK: 0,
    sideWPerK: 0,
    surfaceWPerK: 0,
    steamPerK: 0,
    steamPerKg: 0,
  });

  /** Linearises about the state evaluated last. */
  function linearise(y: Float64Array): void {
    const { terms } = block;
    terms.capacityJPerK = found.capacity;
    terms.waterJPerKg = heat[heatOf.water];
    terms.steamJPerKg = heat[heatOf.steam] + found.binding;
    terms.filmWPerK = found.filmW;
    terms.sideWPerK = lossSlope(sideLoss, values.lossFactor, y[place.panC] - kit.roomC);
    terms.surfaceWPerK = lossSlope(surfaceLoss, values.lossFactor, view.temperatureC - kit.roomC);
    terms.steamPerK = (boilW * found.boilShare) / (heat[heatOf.steam] - heat[heatOf.water] + found.binding);
    terms.steamPerKg = -terms.steamPerK * found.boilSlope;
  }

  return {
    size: movingCount,
    scale: scaleOf(),
    values,
    view,
    setRingW(watts) {
      ringW = watts;
    },
    derivatives: evaluate,
    factor(y, d) {
      linearise(y);
      block.factor(d);
    },
    solve: block.solve,
  };
}
