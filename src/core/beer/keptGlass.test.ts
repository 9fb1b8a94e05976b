import { describe, expect, it } from 'vitest';
import { specificFromRating } from '../colour/rating.ts';
import { glassOf, type KeptDose, type KeptGlass, sugarOf } from './keptGlass.ts';
import { sugarOfLot } from './sugarOfLot.ts';

const around = (mid: number) => ({ low: 0.9 * mid, mid, high: 1.1 * mid });
const lot = {
  name: 'Plum shards',
  weighedKg: 0.37,
  expected: {
    massKg: around(0.39),
    waterShare: around(0.02),
    inverted: { low: 0.8, mid: 0.9, high: 0.95 },
    a430: around(8),
    ebc: around(200),
    srm: around(101.6),
    icumsa: around(9e4),
  },
};
const alkali = { substance: 'sodiumHydroxide', gramsPerKgSucrose: 5 } as const;
const ofLot: KeptDose = {
  sugar: { kind: 'lot', lotId: 'a', alkali, fermentable: null, pricePerKg: 3 },
  massKg: 0.3,
  added: 'late',
};
const bought: KeptDose = {
  sugar: {
    kind: 'bought',
    name: 'amber syrup',
    solids: 0.8,
    specific430AsIs: specificFromRating(60, 'tenPercentByWeight'),
    inverted: null,
    alkali: null,
    fermentable: 0.95,
    pricePerKg: null,
  },
  massKg: 0.2,
  added: 'kettle',
};
const glass: KeptGlass = {
  name: 'Abbey',
  rest: {
    volumeL: 20,
    gravity: 1.06,
    a430PerCm: 0.48,
    attenuation: 0.75,
    sodiumMgPerL: 28,
    calciumMgPerL: 50,
  },
  doses: [ofLot, bought],
  kettleLossL: 1,
  pathCm: 7,
  boughtPricePerKg: null,
  bottledOn: null,
};
const lotOf = (id: string) => (id === 'a' ? lot : undefined);

describe('a kept glass', () => {
  it('is the same beer as its lot and its packet make', () => {
    const poured = glassOf(glass, lotOf);
    if (poured.kind !== 'glass') throw new Error('a lot is missing');
    const { doses, ...rest } = poured.glass;
    expect(rest).toEqual({ rest: glass.rest, kettleLossL: 1, pathCm: 7 });
    expect(doses.map(({ massKg, added }) => [massKg, added])).toEqual([
      [0.3, 'late'],
      [0.2, 'kettle'],
    ]);
    expect(doses[0]?.sugar).toEqual(sugarOfLot(lot, { alkali, pricePerKg: 3 }));
    expect(doses[1]?.sugar).toMatchObject({ name: 'amber syrup', minerals: null, pricePerKg: null });
    expect(doses[1]?.sugar.fermentable).toEqual({ low: 0.95 - 0.02, mid: 0.95, high: 0.95 + 0.02 });
  });

  it('names the doses whose lots are not known, and leaves none out unseen', () => {
    const strange: KeptDose = { ...ofLot, sugar: { ...ofLot.sugar, kind: 'lot', lotId: 'b' } };
    expect(glassOf({ ...glass, doses: [ofLot, strange] }, lotOf)).toEqual({ kind: 'unknown', doses: [1] });
  });

  it('takes no alkali at all for none, and unsaid alkali for unknown', () => {
    const minerals = (gramsPerKgSucrose: number) =>
      sugarOf({ ...bought.sugar, alkali: { ...alkali, gramsPerKgSucrose } }, lotOf)?.minerals?.sodiumGPerKg.mid;
    expect(minerals(0)).toBe(0);
    // 5 g/kg of NaOH, 57.48 % sodium, in a syrup of 80 % solids whose sucrose is half inverted.
    expect(minerals(5)).toBeCloseTo((5 * 0.5748 * 0.8) / (1 + (0.5 * 18.0153) / 342.2965), 3);
    expect(sugarOf(bought.sugar, lotOf)?.minerals).toBeNull();
  });
});
