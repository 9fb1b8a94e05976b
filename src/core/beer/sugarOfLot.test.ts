import { describe, expect, it } from 'vitest';
import { ratingA430, ratingEbc } from '../colour/rating.ts';
import type { Lot } from '../lot/lot.ts';
import { tableSugar } from './boughtSugar.ts';
import { fermentabilityByColour } from './fermentability.ts';
import { requireSugar } from './sugar.ts';
import { sugarOfLot } from './sugarOfLot.ts';
import { certain } from './uncertain.ts';

const a430 = { low: 2, mid: 2.5, high: 3.2 };
const lot: Pick<Lot, 'name' | 'expected' | 'weighedKg'> = {
  name: 'Plum shards, March',
  weighedKg: null,
  expected: {
    massKg: { low: 0.38, mid: 0.39, high: 0.4 },
    waterShare: { low: 0.01, mid: 0.02, high: 0.04 },
    inverted: { low: 0.8, mid: 0.9, high: 0.95 },
    a430,
    ebc: certain(62.5),
    srm: certain(31.75),
    icumsa: certain(27_000),
  },
};

describe('a lot off the shelf', () => {
  it('has the colour that was believed of it: that of its 10 % w/w solution, by its dry solids', () => {
    const { specific430 } = sugarOfLot(lot);
    expect(ratingA430(specific430.mid, 'tenPercentByWeight')).toBeCloseTo(2.5, 12);
    expect(ratingEbc(specific430.high, 'tenPercentByWeight')).toBeCloseTo(80, 9);
  });

  it('ferments by its colour, the range as wide as that of its colour makes it', () => {
    const { fermentable, specific430 } = sugarOfLot(lot);
    expect(fermentable.mid).toBe(fermentabilityByColour(specific430.mid).mid);
    expect(fermentable.low).toBeLessThan(fermentabilityByColour(specific430.mid).low);
    expect(sugarOfLot(lot, { fermentable: certain(0.93) }).fermentable).toEqual(certain(0.93));
  });

  it('takes its solids from its water, turned round, and its stock from the scale before the belief', () => {
    const { solids, stockKg } = sugarOfLot(lot);
    expect(solids).toEqual({ low: 0.96, mid: 0.98, high: 0.99 });
    expect(stockKg).toBe(0.39);
    expect(sugarOfLot({ ...lot, weighedKg: 0.371 }).stockKg).toBe(0.371);
  });

  it('has minerals when its alkali is told, none that are known otherwise', () => {
    expect(sugarOfLot(lot).minerals).toBeNull();
    const told = sugarOfLot(lot, { alkali: { substance: 'sodiumHydroxide', gramsPerKgSucrose: 5 } });
    // 5 g/kg of 57.48 % sodium in 98 % solids that grew by 4.7 %.
    expect(told.minerals?.sodiumGPerKg.mid).toBeCloseTo((5 * 0.57478 * 0.98) / 1.04737, 3);
  });

  it('is a sugar within all limits', () => {
    expect(() => requireSugar(sugarOfLot(lot))).not.toThrow();
    expect(() => requireSugar(tableSugar)).not.toThrow();
  });
});
