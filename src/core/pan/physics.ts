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

/** Less water than this is not told apart from none, kg. */
const driestKg = 1e-6;

/** Diffusion of water in hot syrup, m2/s: 5e-10 at 7 % water, rising with water (assumed). */
function waterDiffusion(waterShare: number): number {
  return 5e-10 * Math.exp(12 * (Math.min(waterShare, 0.3) - 0.07));
}

function lossW(law: LossLaw, factor: number, aboveRoomK: number): number {
  return factor * aboveRoomK * (law.linear + law.quadratic * aboveRoomK);
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
  scale[place.waterKg] = 0.05;
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
  const filmRatio = values.thickFilm / values.thinFilm;
  let ringW = 0;
  // Left by `evaluate` for the linearisation.
  let dry = 0;
  let filmW = 0;
  let capacity = 0;
  let boilShare = 0;

  /** Temperature from heat content, by Newton's method from the last one. */
  function settle(y: Float64Array): void {
    dry = dissolvedKg(y);
    const solids = dry + y[place.crystals] * amountMassKg[amount.sucrose];
    const water = y[place.waterKg];
    let t = Number.isFinite(view.temperatureC) ? view.temperatureC : 100;
    for (let i = 0; i < 12; i++) {
      heats.read(t, heat);
      capacity = water * heat[heatOf.waterCapacity] + solids * heat[heatOf.dryCapacity];
      const move = (water * heat[heatOf.water] + solids * heat[heatOf.dry] - y[place.enthalpyJ]) / capacity;
      t = Math.min(200, Math.max(0, t - move));
      if (Math.abs(move) < 1e-4) break;
    }
    view.temperatureC = t;
  }

  /** The part of the dissolved matter that holds water like hexose: everything but sucrose and malt extract. */
  function findBoil(y: Float64Array): void {
    holders.sucroseKg = y[place.sucrose] * amountMassKg[amount.sucrose];
    holders.maltKg = y[place.maltKg];
    holders.hexoseKg = dry - holders.sucroseKg - holders.maltKg - y[place.mineralKg] + ionHexoseKg * y[place.base];
    const startC = Number.isFinite(view.boilsC) ? view.boilsC : 120;
    view.boilsC = curve.boilsC(Math.max(y[place.waterKg], driestKg), holders, values.boilingTheta, startC);
  }

  /** Steam by diffusion through the surface and the air above it, kg/s. */
  function quietSteam(waterShare: number, latent: number): number {
    const bound = latent + curve.bindingJPerKg();
    const kelvin = view.temperatureC + 273.15;
    const exponent = ((bound * waterMassKg) / 8.314462618) * (1 / (view.boilsC + 273.15) - 1 / kelvin);
    const surface = surfaceVapourLimit / (1 + surfaceVapourLimit * Math.exp(-exponent));
    const room = roomVapourPa / curve.pressurePa;
    const air = airSideKgPerM2S * areaM2 * Math.log((1 - Math.min(room, surface)) / (1 - surface));
    const renewal = 2 * Math.sqrt(waterDiffusion(waterShare) / (Math.PI * values.surfaceRenewalS));
    const liquid = renewal * syrupDensity * waterShare * areaM2;
    return (values.evaporationFactor * air * liquid) / (values.evaporationFactor * air + liquid);
  }

  function evaluate(y: Float64Array, dy: Float64Array): void {
    settle(y);
    findBoil(y);
    const t = view.temperatureC;
    const water = Math.max(y[place.waterKg], driestKg);
    const syrup = dry + water;
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
    boilShare = 0.5 * (1 + above / root);
    const boiling = (boilW * superheat) / (latent + curve.bindingJPerKg());
    const steam = boiling + quietSteam(waterShare, latent);
    view.boilingKgPerS = boiling;
    view.steamKgPerS = steam;

    // Film between pan and syrup: falls from thin to thick between 80 and 96 % solids.
    const s = Math.min(1, Math.max(0, (0.2 - waterShare) / 0.16));
    filmW = areaM2 * values.thinFilm * filmRatio ** (s * s * (3 - 2 * s));
    const toSyrup = filmW * (y[place.panC] - t);
    const sideLost = lossW(sideLoss, values.lossFactor, y[place.panC] - kit.roomC);
    const surfaceLost = lossW(surfaceLoss, values.lossFactor, t - kit.roomC);
    const steamHeat = steam * (heat[heatOf.steam] + curve.bindingJPerKg());

    // Dissolving: slows as the solution nears saturation.
    const crystals = y[place.crystals];
    const sucroseShare = holders.sucroseKg / (holders.sucroseKg + water);
    const room = Math.max(0, 1 - sucroseShare / heat[heatOf.solubility]);
    const dissolving = crystals > 0 ? (crystals * (room + 0.02)) / values.dissolvingS : 0;
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
      capacity;
    dy[place.panC] = (y[place.burnerW] - toSyrup - sideLost) / panJPerK;
    dy[place.burnerW] = (ringW - y[place.burnerW]) / values.stoveLagS;
    dy[place.tipC] = (t - y[place.tipC]) / values.thermometerLagS;
    dy[place.steamKg] = steam;
    dy[place.heatInJ] = y[place.burnerW];
    dy[place.lostJ] = sideLost + surfaceLost;
    dy[place.steamJ] = steamHeat;
    dy[place.reactionJ] = reactionHeat;
  }

  const block = createBlock();

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
      // Uses what the evaluation at the same y left behind.
      const latent = heat[heatOf.steam] - heat[heatOf.water];
      const perK = (boilW * boilShare) / (latent + curve.bindingJPerKg());
      const perKg = -perK * curve.slopeKPerKg();
      const aboveRoom = view.temperatureC - kit.roomC;
      const surface = values.lossFactor * (surfaceLoss.linear + 2 * surfaceLoss.quadratic * aboveRoom);
      const side = values.lossFactor * (sideLoss.linear + 2 * sideLoss.quadratic * (y[place.panC] - kit.roomC));
      block.factor({
        d,
        lagRate: 1 / values.stoveLagS,
        tipRate: 1 / values.thermometerLagS,
        causticRate: 1 / values.causticMixingS,
        limeRate: 1 / values.limeReleaseS,
        panJPerK,
        filmW,
        side,
        surface,
        capacity,
        waterJ: heat[heatOf.water],
        steamJ: heat[heatOf.steam] + curve.bindingJPerKg(),
        perK,
        perKg,
      });
    },
    solve: block.solve,
  };
}

/** Terms of the linearised stiff block. */
interface BlockTerms {
  d: number;
  lagRate: number;
  tipRate: number;
  causticRate: number;
  limeRate: number;
  panJPerK: number;
  filmW: number;
  /** Slopes of the losses, W/K. */
  side: number;
  surface: number;
  capacity: number;
  waterJ: number;
  steamJ: number;
  /** Change of steam with temperature and with water, kg/s for each K and kg. */
  perK: number;
  perKg: number;
}

/** Solver of the stiff block: ring first, then pan, heat and water together, then the thermometer; the rest is explicit. */
function createBlock() {
  let terms: BlockTerms | undefined;
  const m = new Float64Array(9);
  let hPerT = 0;
  let wPerT = 0;

  return {
    factor(t: BlockTerms): void {
      terms = t;
      // Temperature follows heat content and water: dT = (dH - h_water dW) / capacity.
      hPerT = 1 / t.capacity;
      wPerT = -t.waterJ / t.capacity;
      const heatPerT = -t.filmW - t.surface - t.perK * t.steamJ;
      const heatPerW = heatPerT * wPerT - t.perKg * t.steamJ;
      const waterPerT = -t.perK;
      m[0] = t.d + (t.filmW + t.side) / t.panJPerK;
      m[1] = (-t.filmW * hPerT) / t.panJPerK;
      m[2] = (-t.filmW * wPerT) / t.panJPerK;
      m[3] = -t.filmW;
      m[4] = t.d - heatPerT * hPerT;
      m[5] = -heatPerW;
      m[6] = 0;
      m[7] = -waterPerT * hPerT;
      m[8] = t.d - waterPerT * wPerT + t.perKg;
    },
    solve(r: Float64Array): void {
      const t = terms as BlockTerms;
      const explicit = 1 / t.d;
      const burner = r[place.burnerW] / (t.d + t.lagRate);
      const r0 = r[place.panC] + burner / t.panJPerK;
      const r1 = r[place.enthalpyJ];
      const r2 = r[place.waterKg];
      const tip = r[place.tipC];
      const caustic = r[place.caustic] / (t.d + t.causticRate);
      const lime = r[place.lime] / (t.d + t.limeRate);
      const base = r[place.base];
      const heatIn = r[place.heatInJ];
      const lost = r[place.lostJ];
      const steamKg = r[place.steamKg];
      const steamJ = r[place.steamJ];
      for (let i = 0; i < movingCount; i++) r[i] *= explicit;
      // Elimination without pivoting: the diagonal dominates.
      const f1 = m[3] / m[0];
      const a11 = m[4] - f1 * m[1];
      const a12 = m[5] - f1 * m[2];
      const b1 = r1 - f1 * r0;
      const f2 = m[7] / a11;
      const water = (r2 - f2 * b1) / (m[8] - f2 * a12);
      const heat = (b1 - a12 * water) / a11;
      r[place.waterKg] = water;
      r[place.enthalpyJ] = heat;
      r[place.panC] = (r0 - m[1] * heat - m[2] * water) / m[0];
      r[place.burnerW] = burner;
      r[place.tipC] = (tip + t.tipRate * (hPerT * heat + wPerT * water)) / (t.d + t.tipRate);
      r[place.caustic] = caustic;
      r[place.lime] = lime;
      // Partners of the block, linearised alike so that balances close to rounding: base gains what caustic and lime lose.
      r[place.base] = explicit * (base + t.causticRate * caustic + t.limeRate * lime);
      // So do the running totals of what leaves and enters.
      const temperature = hPerT * heat + wPerT * water;
      const steam = t.perK * temperature + t.perKg * water;
      r[place.heatInJ] = explicit * (heatIn + burner);
      r[place.lostJ] = explicit * (lost + t.side * r[place.panC] + t.surface * temperature);
      r[place.steamKg] = explicit * (steamKg + steam);
      r[place.steamJ] = explicit * (steamJ + t.steamJ * steam);
    },
  };
}
