/** A glass with every uncertain number settled: the middle of its range, or a draw. */

import type { Glass, Rest, WhenAdded } from './glass.ts';
import { beerParameters } from './parameters.ts';
import { type Pick, rangeOfParameter } from './uncertain.ts';

export interface SettledDose {
  readonly massKg: number;
  readonly added: WhenAdded;
  readonly solids: number;
  readonly sucrose: number;
  readonly fermentable: number;
  readonly specific430: number;
  readonly sodiumGPerKg: number;
  readonly calciumGPerKg: number;
}

export interface SettledGlass {
  readonly rest: Rest;
  readonly doses: readonly SettledDose[];
  readonly kettleLossL: number;
  readonly colourKept: number;
  readonly extractPerAlcohol: number;
}

const colourKept = rangeOfParameter(beerParameters.colourKept);
const attenuationError = rangeOfParameter(beerParameters.attenuationError);
const extractPerAlcohol = rangeOfParameter(beerParameters.extractPerAlcohol);

export function settled({ rest, doses, kettleLossL }: Glass, pick: Pick): SettledGlass {
  return {
    rest: { ...rest, attenuation: rest.attenuation + pick(attenuationError) },
    kettleLossL,
    colourKept: within(pick(colourKept), 0, 1),
    extractPerAlcohol: pick(extractPerAlcohol),
    doses: doses.map(({ sugar, massKg, added }) => ({
      massKg,
      added,
      solids: within(pick(sugar.solids), 0, 1),
      sucrose: within(pick(sugar.sucrose), 0, 1),
      fermentable: within(pick(sugar.fermentable), 0, 1),
      specific430: Math.max(0, pick(sugar.specific430)),
      sodiumGPerKg: sugar.minerals ? Math.max(0, pick(sugar.minerals.sodiumGPerKg)) : 0,
      calciumGPerKg: sugar.minerals ? Math.max(0, pick(sugar.minerals.calciumGPerKg)) : 0,
    })),
  };
}

function within(value: number, low: number, high: number): number {
  return Math.min(high, Math.max(low, value));
}
