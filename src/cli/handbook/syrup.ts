/** Handbook: density, heat, flow and glass of syrups and candy. */
import { conductivityWPerMK } from '../../core/matter/conductivity.ts';
import { syrupDensityKgPerM3 } from '../../core/matter/density.ts';
import { glassTransitionC } from '../../core/matter/glass.ts';
import { dryHeatCapacityJPerKgK, syrupHeatCapacityJPerKgK } from '../../core/matter/heatCapacity.ts';
import { sucroseSolubilityFraction } from '../../core/matter/solubility.ts';
import type { DrySolids } from '../../core/matter/sugars.ts';
import { viscosityPaS } from '../../core/matter/viscosity.ts';
import { Beyond, entry } from './entry.ts';
import { give, giveFactor, giveShare } from './range.ts';
import { composition, syrupOf, temperature } from './syrupInputs.ts';

const manual = 'Bubnik et al. 1995, Sugar Technologists Manual';

/** How far laboratories lie apart on each dry sugar's glass transition, K (sucrose and fructose seen, others assumed). */
const dryGlassErrorK: DrySolids = { sucrose: 2, glucose: 7, fructose: 8, maltose: 5, dextrin: 10 };

/** Error by the water: 3 to 5 K at 2 to 5 % water, less in drier candy; carried on in proportion beyond (assumed). */
function glassErrorByWaterK(waterPercent: number): number {
  return Math.min(1.5 * waterPercent, 5 / 3 + (2 / 3) * waterPercent, 15);
}

/** Up to here viscosity has a measured equation with a stated error, mass fraction of solids. */
const thinTo = 0.74;

/** Factor by which viscosity may be wrong: 8 % in thin syrups, 4 in thick ones, between them by steps of equal factors. */
function viscosityFactor(solids: number): number {
  const thick = Math.min(1, Math.max(0, (solids - thinTo) / (0.9 - thinTo)));
  return 1.08 * (4 / 1.08) ** thick;
}

/** Thick syrup is computed from its glass transition, below which nothing flows. */
function requireFlowing(solids: number, dry: DrySolids, temperatureC: number): void {
  const glassC = glassTransitionC(solids, dry);
  if (solids <= 0.8 || temperatureC >= glassC) return;
  const from = Math.ceil(10 * glassC) / 10;
  throw new Beyond('temperature', `${from.toFixed(1)} °C to 200 °C; colder, this candy is a glass and does not flow`);
}

/** Temperature of a kitchen shelf, and how far below its glass transition candy keeps for long (common practice, no source). */
const [shelfC, marginK] = [20, 10];

function keepingNote(solids: number, glassC: number): string {
  if (solids < 0.75) return 'a solution, no candy: it freezes or stays liquid long before it could be a glass';
  if (glassC - marginK >= shelfC) {
    return `hard on a shelf of ${shelfC} °C; keep it ${marginK} °C and more below its glass transition, dry and sealed, and it stays hard`;
  }
  return glassC > shelfC
    ? `barely hard on a shelf of ${shelfC} °C, and softer with time: it wants ${Math.floor(glassC - marginK)} °C or less, dry and sealed`
    : `not hard on a shelf of ${shelfC} °C: it flows or sticks there`;
}

export const syrupEntries = [
  entry({
    name: 'density',
    meaning: 'density of a syrup',
    unit: 'kg/m3',
    valid: '0 to 100 % solids, 0 to 200 °C; extrapolated beyond 85 % and 100 °C',
    source: `ICUMSA SPS-4; ${manual}; expansion above 100 °C assumed`,
    mark: 'seen in a transcription',
    example: '--sucrose 65 --temperature 20C',
    inputs: { ...composition, temperature: temperature('syrup temperature', 0, 200) },
    compute: (given) => {
      const { solids, dry } = syrupOf(given);
      const fitted = solids <= 0.85 && given.temperature <= 100;
      const otherSugars = dry.sucrose < 1 ? 0.005 : 0;
      const means = fitted ? 'stated error' : 'error assumed';
      const error = (fitted ? 0.001 : 0.015) + otherSugars;
      return giveShare(syrupDensityKgPerM3(solids, given.temperature), error, means);
    },
  }),
  entry({
    name: 'heat-capacity',
    meaning: 'heat capacity of a syrup',
    unit: 'J/(kg.K)',
    valid: '0 to 100 % solids, 0 to 200 °C; not for the glass',
    source: `water by IAPWS-95, dry sugar by ${manual} to 94 °C, by Magon et al. 2014 (from memory) above`,
    mark: 'derived',
    example: '--sucrose 85 --temperature 115C',
    inputs: { ...composition, temperature: temperature('syrup temperature', 0, 200) },
    compute: (given) => {
      const { solids } = syrupOf(given);
      const fitted = given.temperature <= 94;
      const error = fitted ? 0.015 : 0.06 * solids + 0.0005;
      return {
        ...giveShare(
          syrupHeatCapacityJPerKgK(solids, given.temperature),
          error,
          fitted ? 'checked against a table' : 'error assumed',
        ),
        further: { 'dry_sugar_J/(kg.K)': dryHeatCapacityJPerKgK(given.temperature) },
      };
    },
  }),
  entry({
    name: 'viscosity',
    meaning: 'viscosity of a syrup',
    unit: 'Pa.s',
    valid: '0 to 100 % solids, 0 to 200 °C, above the glass transition',
    source:
      'Genotelle 1978, Ind. Aliment. Agric. 95:747, to 80 %; Williams, Landel & Ferry 1955 from 90 %; a blend between',
    mark: 'derived',
    example: '--sucrose 74 --temperature 20C',
    inputs: { ...composition, temperature: temperature('syrup temperature', 0, 200) },
    compute: (given) => {
      const { solids, dry } = syrupOf(given);
      requireFlowing(solids, dry, given.temperature);
      const means = solids <= thinTo ? 'stated error' : 'error assumed';
      return giveFactor(viscosityPaS(solids, given.temperature, dry), viscosityFactor(solids), means);
    },
  }),
  entry({
    name: 'conductivity',
    meaning: 'thermal conductivity of a syrup',
    unit: 'W/(m.K)',
    valid: '0 to 100 % solids, 0 to 200 °C; fitted to 80 °C',
    source: manual,
    mark: 'seen in a transcription',
    example: '--sucrose 80 --temperature 60C',
    inputs: { ...composition, temperature: temperature('syrup temperature', 0, 200) },
    compute: (given) => {
      const error = given.temperature <= 80 ? 0.05 : 0.1;
      return giveShare(conductivityWPerMK(syrupOf(given).solids, given.temperature), error, 'error assumed');
    },
  }),
  entry({
    name: 'solubility',
    meaning: 'sucrose in a saturated solution',
    unit: '%',
    valid: '-13 to 100 °C',
    source: 'Vavrinecz 1962 (ICUMSA SPS-2)',
    mark: 'seen in a transcription',
    example: '--temperature 20C',
    inputs: { temperature: temperature('temperature', -13, 100) },
    compute: ({ temperature: t }) => give(100 * sucroseSolubilityFraction(t), 0.4, 'stated error'),
  }),
  entry({
    name: 'glass-transition',
    meaning: 'temperature below which a candy is a glass and breaks dry',
    unit: 'Cel',
    valid: '0 to 100 % solids; measured data end near 75 %',
    source: 'Gordon & Taylor 1952 with the constant of Roos 1993, Carbohydr. Res. 238:39; dry sugars by Fox 1956',
    mark: 'from memory',
    example: '--sucrose 97',
    inputs: composition,
    compute: (given) => {
      const { solids, dry } = syrupOf(given);
      const names = Object.keys(dryGlassErrorK) as (keyof DrySolids)[];
      const dryErrorK = names.reduce((sum, name) => sum + dry[name] * dryGlassErrorK[name], 0);
      const errorK = Math.hypot(dryErrorK, glassErrorByWaterK(100 * (1 - solids)));
      const glassC = glassTransitionC(solids, dry);
      return { ...give(glassC, errorK, 'error from memory or assumed'), note: keepingNote(solids, glassC) };
    },
  }),
];
