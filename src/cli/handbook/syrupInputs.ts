/** Options that several properties share: what the syrup is made of, and the air over it. */
import { ACTIVITY_MAX_SOLIDS } from '../../core/matter/activity.ts';
import { pressureAtAltitudePa } from '../../core/matter/air.ts';
import { boilingPointC } from '../../core/matter/boiling.ts';
import { type DrySolids, partlyInverted, pureSucrose } from '../../core/matter/sugars.ts';
import { boilingPointOfWaterC } from '../../core/matter/water.ts';
import { flagOf, type Given, optional, percent, quantity, usually, word } from '../input.ts';
import { Stop } from '../stop.ts';
import { Beyond } from './entry.ts';

export const composition = {
  sucrose: optional(percent('sucrose, per cent of the mass')),
  glucose: optional(percent('glucose, per cent of the mass')),
  fructose: optional(percent('fructose, per cent of the mass')),
  maltose: optional(percent('maltose, per cent of the mass')),
  dextrin: optional(percent("malt extract's larger sugars, per cent of the mass; the rest is water")),
};

export interface Syrup {
  /** Mass fraction of dry solids, and the mass shares of these. */
  readonly solids: number;
  readonly dry: DrySolids;
}

/** @param most the largest share of dry solids that the property is known for */
export function syrupOf(given: Given<typeof composition>, most = 1): Syrup {
  const { sucrose, glucose, fructose, maltose, dextrin } = given;
  const masses = [sucrose, glucose, fructose, maltose, dextrin];
  if (masses.every((mass) => mass === undefined)) {
    throw new Stop({ kind: 'misused', field: '--sucrose', message: 'say what is in the syrup, such as --sucrose 85' });
  }
  const [s, g, f, m, d] = masses.map((mass) => mass ?? 0) as [number, number, number, number, number];
  const sum = s + g + f + m + d;
  if (sum > most + 1e-9) throw tooMuchSugar(given, sum, most);
  if (sum === 0) return { solids: 0, dry: pureSucrose };
  const dry = { sucrose: s / sum, glucose: g / sum, fructose: f / sum, maltose: m / sum, dextrin: d / sum };
  return { solids: Math.min(most, sum), dry };
}

function tooMuchSugar(given: Given<typeof composition>, sum: number, most: number): Stop {
  const names = Object.entries(given).flatMap(([name, share]) => (share ? [name] : []));
  const percentOf = (share: number) => `${Number((100 * share).toPrecision(6))} %`;
  const [value, allowed] = [percentOf(sum), `0 to ${percentOf(most)}`];
  const [only = ''] = names;
  const field = names.length === 1 ? flagOf(only) : 'sum of the sugars';
  const what = names.length === 1 ? `${field} is` : 'the sugars add up to';
  const message = `${what} ${value}; allowed: ${allowed}, the rest is water`;
  return new Stop({ kind: 'outsideRange', field, value, allowed, message });
}

/** The dry sugar by name, for properties that find the water. */
export const drySugar = {
  sugar: usually(word('the dry sugar', ['sucrose', 'invert']), 'sucrose'),
  inverted: optional(percent('invert sugar in the dry sugar, per cent, instead of --sugar')),
};

export function drySolidsOf({ sugar, inverted }: Given<typeof drySugar>): DrySolids {
  return partlyInverted(inverted ?? (sugar === 'invert' ? 1 : 0));
}

export const air = {
  pressure: optional(
    quantity('pressure', 'air pressure, such as 95kPa; 101.325 kPa if not given', 'kPa', [5e3, 1.2e5]),
  ),
  altitude: optional(quantity('length', 'altitude instead, such as 800m', 'm', [-500, 11_000])),
};

export function pressurePaOf({ pressure, altitude }: Given<typeof air>): number {
  if (pressure !== undefined && altitude !== undefined) {
    const message = '--pressure and --altitude both say what the air is like: give one of them';
    throw new Stop({ kind: 'misused', field: '--altitude', message });
  }
  return altitude === undefined ? (pressure ?? 101_325) : pressureAtAltitudePa(altitude);
}

/** Refuses a temperature at which no syrup of these sugars boils that the boiling curve is known for. */
export function requireBoiling(temperatureC: number, dry: DrySolids, pressurePa: number, highestC = 200): void {
  const waterC = boilingPointOfWaterC(pressurePa);
  const dryC = boilingPointC(ACTIVITY_MAX_SOLIDS, dry, pressurePa);
  if (temperatureC >= waterC && temperatureC <= Math.min(dryC, highestC)) return;
  const from = `${(Math.ceil(100 * waterC) / 100).toFixed(2)} °C, where water boils in this air,`;
  const to =
    dryC > highestC
      ? `${highestC} °C`
      : `${(Math.floor(10 * dryC) / 10).toFixed(1)} °C, where ${100 * ACTIVITY_MAX_SOLIDS} % solids boil`;
  throw new Beyond('temperature', `${from} to ${to}`);
}

/** Temperature of a syrup, such as 130C. */
export function temperature(what: string, low: number, high: number) {
  return quantity('temperature', `${what}, such as 130C or 266F`, 'C', [low, high]);
}
