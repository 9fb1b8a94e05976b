/** Options that several properties share: what the syrup is made of, and the air over it. */
import { pressureAtAltitudePa } from '../../core/matter/air.ts';
import { type DrySolids, partlyInverted, pureSucrose } from '../../core/matter/sugars.ts';
import { type Given, optional, percent, quantity, usually, word } from '../input.ts';
import { Stop } from '../stop.ts';

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

export function syrupOf({ sucrose, glucose, fructose, maltose, dextrin }: Given<typeof composition>): Syrup {
  const masses = [sucrose, glucose, fructose, maltose, dextrin];
  if (masses.every((mass) => mass === undefined)) {
    throw new Stop({ kind: 'misused', field: '--sucrose', message: 'say what is in the syrup, such as --sucrose 85' });
  }
  const [s, g, f, m, d] = masses.map((mass) => mass ?? 0) as [number, number, number, number, number];
  const sum = s + g + f + m + d;
  if (sum > 1 + 1e-9) {
    const given = `${Number((100 * sum).toPrecision(6))} %`;
    const message = `the sugars add up to ${given}; allowed is 100 % at most, the rest is water`;
    throw new Stop({ kind: 'outsideRange', field: 'sum of the sugars', value: given, allowed: '0 to 100 %', message });
  }
  if (sum === 0) return { solids: 0, dry: pureSucrose };
  const dry = { sucrose: s / sum, glucose: g / sum, fructose: f / sum, maltose: m / sum, dextrin: d / sum };
  return { solids: Math.min(1, sum), dry };
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

/** Temperature of a syrup, such as 130C. */
export function temperature(what: string, low: number, high: number) {
  return quantity('temperature', `${what}, such as 130C or 266F`, 'C', [low, high]);
}
