/**
 * The stiff part of the pan, linearised: ring, pan, heat content, water, thermometer, alkali mixing in, and the running totals that
 * go with them. Solved as (d I - J) x = r for the integrator's stages; the chemistry goes through as in an explicit method.
 */
import { movingCount, place } from './state.ts';

/** Slopes of the equations at one state. */
export interface BlockTerms {
  /** Rates of the single lags, 1/s. */
  ringRate: number;
  tipRate: number;
  causticRate: number;
  limeRate: number;
  panJPerK: number;
  /** Heat capacity of the pan's contents, J/K, and heat content of their water, J/kg. */
  capacityJPerK: number;
  waterJPerKg: number;
  /** Heat carried off by steam, J/kg. */
  steamJPerKg: number;
  /** Heat from pan to contents, and slopes of the losses of the pan's side and of the surface, W/K. */
  filmWPerK: number;
  sideWPerK: number;
  surfaceWPerK: number;
  /** Change of steam with temperature, kg/s for each K, and with water, kg/s for each kg. */
  steamPerK: number;
  steamPerKg: number;
}

export interface StiffBlock {
  /** To be set before `factor`. */
  readonly terms: BlockTerms;
  factor(d: number): void;
  /** Replaces r by x. */
  solve(r: Float64Array): void;
}

export function createStiffBlock(terms: BlockTerms): StiffBlock {
  // What `solve` needs, left by `factor`: reciprocals, so that it only multiplies.
  const f = {
    explicit: 1.5,
    ring: 1.5,
    tip: 1.5,
    caustic: 1.5,
    lime: 1.5,
    tPerHeat: 1.5,
    tPerWater: 1.5,
    pan: 1.5,
    panHeat: 1.5,
    panWater: 1.5,
    heatPan: 1.5,
    heat: 1.5,
    heatWater: 1.5,
    waterHeat: 1.5,
    water: 1.5,
  };

  return {
    terms,
    factor(d) {
      const { panJPerK, capacityJPerK, filmWPerK, steamPerK, steamPerKg, steamJPerKg } = terms;
      f.explicit = 1 / d;
      f.ring = 1 / (d + terms.ringRate);
      f.tip = 1 / (d + terms.tipRate);
      f.caustic = 1 / (d + terms.causticRate);
      f.lime = 1 / (d + terms.limeRate);
      // Temperature follows heat content and water: dT = (dH - h_water dW) / capacity.
      f.tPerHeat = 1 / capacityJPerK;
      f.tPerWater = -terms.waterJPerKg / capacityJPerK;
      const heatPerT = -filmWPerK - terms.surfaceWPerK - steamPerK * steamJPerKg;
      // Elimination of pan, then heat, then water, without pivoting: the diagonal dominates.
      f.pan = 1 / (d + (filmWPerK + terms.sideWPerK) / panJPerK);
      f.panHeat = (-filmWPerK * f.tPerHeat) / panJPerK;
      f.panWater = (-filmWPerK * f.tPerWater) / panJPerK;
      f.heatPan = -filmWPerK * f.pan;
      f.heat = 1 / (d - heatPerT * f.tPerHeat - f.heatPan * f.panHeat);
      f.heatWater = steamPerKg * steamJPerKg - heatPerT * f.tPerWater - f.heatPan * f.panWater;
      f.waterHeat = steamPerK * f.tPerHeat * f.heat;
      f.water = 1 / (d + steamPerK * f.tPerWater + steamPerKg - f.waterHeat * f.heatWater);
    },
    solve(r) {
      const { explicit } = f;
      const burner = r[place.burnerW] * f.ring;
      const panPart = r[place.panC] + burner / terms.panJPerK;
      const heatPart = r[place.enthalpyJ] - f.heatPan * panPart;
      const water = (r[place.waterKg] - f.waterHeat * heatPart) * f.water;
      const heat = (heatPart - f.heatWater * water) * f.heat;
      const pan = (panPart - f.panHeat * heat - f.panWater * water) * f.pan;
      const temperature = f.tPerHeat * heat + f.tPerWater * water;
      const tip = (r[place.tipC] + terms.tipRate * temperature) * f.tip;
      const caustic = r[place.caustic] * f.caustic;
      const lime = r[place.lime] * f.lime;
      const steam = terms.steamPerK * temperature + terms.steamPerKg * water;

      // Partners of the block are linearised alike, so that balances close to rounding: base gains what caustic and lime lose,
      // and the running totals gain what enters and leaves.
      r[place.base] += terms.causticRate * caustic + terms.limeRate * lime;
      r[place.heatInJ] += burner;
      r[place.lostJ] += terms.sideWPerK * pan + terms.surfaceWPerK * temperature;
      r[place.steamKg] += steam;
      r[place.steamJ] += terms.steamJPerKg * steam;
      for (let i = 0; i < movingCount; i++) r[i] *= explicit;
      r[place.waterKg] = water;
      r[place.enthalpyJ] = heat;
      r[place.panC] = pan;
      r[place.burnerW] = burner;
      r[place.tipC] = tip;
      r[place.caustic] = caustic;
      r[place.lime] = lime;
    },
  };
}
