// Each amount worked by hand beside it. Molar masses: IUPAC standard atomic weights.
import { describe, expect, test } from 'vitest';
import { hazardOf } from '../advice/hazards.ts';
import { defaultKit } from '../pan/kit.ts';
import { prepareKit } from '../pan/preparedKit.ts';
import { place } from '../pan/state.ts';
import { letDownWaterKg, trayAreaM2 } from './account/casting.ts';
import { coldBathKg } from './account/coldBath.ts';
import { costOf } from './account/cost.ts';
import { energyKWh } from './account/energy.ts';
import { citricCharges, neutraliserFor, neutralisingAmounts, neutralisingStrength } from './account/neutraliser.ts';
import { waterCheck } from './account/waterCheck.ts';
import { accountOf } from './account.ts';
import { amountsFor, waterPerSugar } from './amounts.ts';
import { planCautions } from './cautions.ts';
import { mineralsOf } from './minerals.ts';
import { planFor } from './plan.ts';
import { defaultRequest } from './request.ts';

describe('alkali', () => {
  test('that is 90 % hydroxide and 5 % soda: 5 g pure for a kg are 5.332 g weighed', () => {
    // Soda counts 2 x 39.997 / 105.988 = 0.75475 of its mass as NaOH: 0.90 + 0.05 x 0.75475 = 0.93774; 5 / 0.93774 = 5.332.
    const { alkali } = amountsFor({ ...defaultRequest, alkaliActive: 0.9, alkaliCarbonate: 0.05 }, 1);
    expect((alkali?.weighedKg ?? 0) * 1000).toBeCloseTo(5 / (0.9 + (0.05 * 2 * 39.997) / 105.988), 6);
    expect((alkali?.weighedKg ?? 0) * 1000).toBeCloseTo(5.332, 3);
    // 20 % solution: 25 g in all, so 25 - 5.332 = 19.668 g of water.
    expect((alkali?.waterKg ?? 0) * 1000).toBeCloseTo(19.668, 3);
  });

  test('as slaked lime: 4 g pure at 92 % are 4.348 g weighed; its carbonate counts for nothing', () => {
    const lime = { ...defaultRequest, alkali: 'calciumHydroxide' as const, alkaliGPerKg: 4, solutionStrength: 0.1 };
    const { alkali } = amountsFor({ ...lime, alkaliActive: 0.92, alkaliCarbonate: 0.05 }, 1);
    expect((alkali?.weighedKg ?? 0) * 1000).toBeCloseTo(4.348, 3);
    // 10 % slurry: 40 g in all; 2 x 4 / 74.092 = 0.10797 eq.
    expect((alkali?.waterKg ?? 0) * 1000).toBeCloseTo(40 - 4.348, 3);
    expect(alkali?.equivalents).toBeCloseTo(0.10797, 5);
  });

  test('that has stood open is cautioned; fresh alkali and the pale route are not', () => {
    expect(planCautions({ ...defaultRequest, alkaliCarbonate: 0.1 }).map(({ id }) => id)).toEqual(['CAU-STALE-ALKALI']);
    expect(planCautions({ ...defaultRequest, alkaliCarbonate: 0.02 })).toEqual([]);
    expect(planCautions({ ...defaultRequest, route: 'pale', alkaliCarbonate: 0.1 })).toEqual([]);
  });

  test('and carbonate can be no more than all of what is weighed', () => {
    expect(() =>
      planFor({ ...defaultRequest, alkaliActive: 0.9, alkaliCarbonate: 0.2 }, prepareKit(defaultKit)),
    ).toThrow('together');
    // What is left out is as usual, 97 % hydroxide: beside it 5 % of carbonate is too much.
    expect(() => planFor({ ...defaultRequest, alkaliCarbonate: 0.05 }, prepareKit(defaultKit))).toThrow(
      'together is 1.02',
    );
    expect(planFor({ ...defaultRequest, alkaliCarbonate: 0.03 }, prepareKit(defaultKit)).kind).toBe('plan');
  });

  test('leaves its metal: 5 g NaOH in a kg of finished sugar are 2.874 g of sodium, 5 g Ca(OH)2 2.705 g of calcium', () => {
    // 22.990 / 39.997 = 0.57479; 40.078 / 74.092 = 0.54092.
    expect(mineralsOf({ substance: 'sodiumHydroxide', equivalents: 5 / 39.997 }, 1).sodiumGPerKg).toBeCloseTo(2.874, 3);
    const lime = mineralsOf({ substance: 'calciumHydroxide', equivalents: 10 / 74.092 }, 1);
    expect(lime.calciumGPerKg).toBeCloseTo(2.7046, 3);
    expect(lime.sodiumGPerKg).toBe(0);
  });
});

describe('the acid of the pale route', () => {
  test('carries 1.957 charges at pH 5.5', () => {
    // Against undissociated acid = 1: 10^2.372 = 235.5 once, x 10^0.739 = 1291 twice, x 10^-0.896 = 164.0 thrice charged;
    // (235.5 + 2582 + 492) / 1691.5 = 1.957.
    expect(citricCharges(5.5)).toBeCloseTo(1.957, 3);
    expect(citricCharges(9)).toBeCloseTo(3, 2);
    expect(citricCharges(1)).toBeLessThan(0.01);
  });

  test('of 1.5 g takes 0.611 g NaOH or 0.566 g Ca(OH)2 to pH 5.5, less what the water brought', () => {
    // 1.5 / 192.124 = 7.807 mmol x 1.957 = 15.28 meq; x 39.997 = 0.611 g; x 74.092 / 2 = 0.566 g.
    const found = neutraliserFor(0.0015, 0);
    expect(found.naohKg * 1000).toBeCloseTo(0.611, 3);
    expect(found.caoh2Kg * 1000).toBeCloseTo(0.566, 3);
    expect(neutraliserFor(0.0015, 0.005).equivalents).toBeCloseTo(found.equivalents - 0.005, 9);
    expect(neutraliserFor(0.0001, 0.005).equivalents).toBe(0);
  });

  test('what neutralises a pale syrup is classed by the strength that it is mixed to, and mixes to that strength', () => {
    expect(hazardOf('sodiumHydroxide', neutralisingStrength)).toMatchObject({
      word: 'Danger',
      says: expect.stringContaining('1A'),
    });
    // 1.5 g of citric acid take 0.611 g NaOH or 0.566 g Ca(OH)2; 5 % of it by weight is 19 times as much water.
    const neutraliser = neutraliserFor(0.0015, 0);
    const lye = neutralisingAmounts('sodiumHydroxide', neutraliser);
    expect(lye.pureKg * 1000).toBeCloseTo(0.611, 3);
    expect(lye.waterKg / lye.pureKg).toBeCloseTo(19, 9);
    expect(neutralisingAmounts('calciumHydroxide', neutraliser).pureKg * 1000).toBeCloseTo(0.566, 3);
  });
});

describe('water to dissolve a kg of sugar', () => {
  test('by 80 C are the 330 g of practice, 22 % over saturation', () => {
    // Saturated at 80 C: 64.447 + 6.5776 + 10.3482 - 0.7977 - 1.8964 = 78.679 %, so 0.21321 / 0.78679 = 0.27099 kg; 0.33 / 0.27099 = 1.2178.
    expect(waterPerSugar(80)).toBe(0.33);
    expect(amountsFor(defaultRequest, 0.4).charge.waterKg).toBe(0.4 * 0.33);
  });

  test('by 40 C are 519 g, by 90 C 290 g, with the same margin', () => {
    // 40 C: 64.447 + 3.2888 + 2.5870 - 0.0997 - 0.1185 = 70.105 %: 0.29895 / 0.70105 x 1.2178 = 0.5193.
    // 90 C: 64.447 + 7.3998 + 13.0969 - 1.1358 - 3.0377 = 80.770 %: 0.19230 / 0.80770 x 1.2178 = 0.2899.
    expect(waterPerSugar(40)).toBeCloseTo(0.5193, 3);
    expect(waterPerSugar(90)).toBeCloseTo(0.2899, 3);
    expect(amountsFor({ ...defaultRequest, dissolveC: 40 }, 0.4).charge.waterKg).toBeCloseTo(0.4 * 0.5193, 3);
  });

  test('is enough for all of it to dissolve before the climb, from little water to much', () => {
    for (const dissolveC of [20, 80, 90]) {
      const planned = planFor({ ...defaultRequest, dissolveC }, prepareKit(defaultKit));
      if (planned.kind === 'refused') throw new Error('refused');
      const { course } = planned;
      const [, climb] = course.steps;
      const crystals = course.states[place.crystals]?.[Math.ceil(climb?.endS ?? 0)] ?? Number.NaN;
      const sucrose = course.states[place.sucrose]?.[0] ?? 0;
      const all = sucrose + (course.states[place.crystals]?.[0] ?? 0);
      expect(crystals / all, `dissolved by ${dissolveC} C`).toBeLessThan(0.01);
    }
    expect(() => planFor({ ...defaultRequest, dissolveC: 95 }, prepareKit(defaultKit))).toThrow('dissolveC is 95');
  });
});

describe('330 g of water', () => {
  const takes = { waterKg: 0.33, alkaliEq: 0.125, yieldKg: 1 };

  test('of 200 mg/L alkalinity bring 1.32 meq, as 0.0528 g NaOH; of no alkalinity nothing', () => {
    // 0.33 L x 200 mg/L = 66 mg; x 2 / 100.087 = 1.319 meq (the reactions page says 1.3).
    const check = waterCheck({ alkalinityMgPerL: 200 }, takes);
    expect(check.equivalents * 1000).toBeCloseTo(1.319, 3);
    expect(check.asNaohG).toBeCloseTo(0.0528, 4);
    expect(waterCheck({ alkalinityMgPerL: 0 }, takes)).toMatchObject({ equivalents: 0, hardness: undefined });
  });

  test('of 300 mg/L hardness hold 39.6 mg of calcium, and bind at most 1.58 % of 5 g NaOH', () => {
    // 0.33 x 300 = 99 mg; / 100.087 = 0.98914 mmol; x 40.078 = 39.64 mg. 2 x 0.98914 = 1.978 meq of 125 meq: 1.583 %.
    const { hardness } = waterCheck({ alkalinityMgPerL: 200, hardnessMgPerL: 300 }, takes);
    expect((hardness?.calciumGPerKg ?? 0) * 1000).toBeCloseTo(39.64, 2);
    expect(hardness?.bindsAtMost).toBeCloseTo(0.01583, 5);
  });

  test('boiled before lose as much alkalinity as there is hardness to go with it', () => {
    const boilsOut = (alkalinityMgPerL: number, hardnessMgPerL: number) =>
      waterCheck({ alkalinityMgPerL, hardnessMgPerL }, takes).hardness?.boilsOutMgPerL;
    expect(boilsOut(200, 300)).toBe(200);
    // Softened water keeps its alkalinity: sodium does not fall out.
    expect(boilsOut(200, 10)).toBe(10);
  });

  test('and no alkali bind none of it', () => {
    const { hardness } = waterCheck({ alkalinityMgPerL: 0, hardnessMgPerL: 300 }, { ...takes, alkaliEq: 0 });
    expect(hardness?.bindsAtMost).toBe(0);
  });
});

test('a bath for 400 g at 155 C in a pan of 450 J/K takes 0.753 kg of water of 21 C', () => {
  // Supercooled melt at 140 C (Magon et al. 2014): 2513 J/(kg K); with 2 % water of 4290: 2548. 30 K x (0.4 x 2548 + 450) = 44.1 kJ;
  // / (14 K x 4180 J/(kg K)) = 0.753 kg.
  const kg = coldBathKg({ contentsKg: 0.4, solids: 0.98, panJPerK: 450, temperatureC: 155 }, 21);
  expect(Math.abs(kg / 0.753 - 1)).toBeLessThan(0.005);
  expect(coldBathKg({ contentsKg: 0.4, solids: 0.98, panJPerK: 450, temperatureC: 110 }, 21)).toBe(0);
});

test('400 g of hard sugar cover 436 cm2 at 6 mm, within the 1.5 % of the extrapolated density', () => {
  // 0.4 kg / 1530 kg/m3 (98 % solids) = 261 cm3; / 0.6 cm = 436 cm2.
  expect(trayAreaM2(0.4, 0.98) * 1e4).toBeGreaterThan(436 * 0.985);
  expect(trayAreaM2(0.4, 0.98) * 1e4).toBeLessThan(436 * 1.015);
  expect(() => trayAreaM2(0.4, 0.98, 0.1)).toThrow('thickness of the cast (m) is 0.1');
});

test('315 g solids with 20 g water take 58.75 g more to 80 Brix', () => {
  // 315 / 0.80 = 393.75 g of syrup; less 315 + 20.
  expect(letDownWaterKg(0.315, 0.02, 0.8) * 1000).toBeCloseTo(58.75, 9);
  expect(letDownWaterKg(0.315, 0.2, 0.8)).toBe(0);
});

test('an hour on 3 of 9 of a ring of 1800 W, then half an hour off, is 0.6 kWh', () => {
  const steps = [{ kind: 'invert' as const, startS: 0, endS: 5400, spoonfuls: 0 }];
  const deeds = [
    { timeS: 0, deed: { kind: 'heat' as const, notch: 3 } },
    { timeS: 3600, deed: { kind: 'heat' as const, notch: 0 } },
  ];
  expect(energyKWh({ deeds, steps }, defaultKit.stove)).toBeCloseTo(0.6, 12);
});

test('400 g sugar at 1.20, 3.2 g malt extract at 10, 0.7 kWh at 0.30 are 0.722 for 400 g: 1.805 a kg; 9 a kg bought saves 2.878', () => {
  const amounts = {
    charge: { sucroseKg: 0.4, waterKg: 0.13, maltExtractKg: 0.0032, citricAcidKg: 0 },
    alkali: undefined,
  };
  // 0.48 + 0.032 + 0.21 = 0.722; 9 x 0.4 - 0.722 = 2.878.
  const cost = costOf(amounts, 0.7, 0.4, { sugar: 1.2, maltExtract: 10, energy: 0.3, bought: 9 });
  expect(cost?.batch).toBeCloseTo(0.722, 12);
  expect(cost?.perKg).toBeCloseTo(1.805, 12);
  expect(cost?.saved).toBeCloseTo(2.878, 12);
  expect(cost?.unpriced).toEqual([]);
  expect(costOf(amounts, 0.7, 0.4, { sugar: 1.2 })).toMatchObject({
    saved: undefined,
    unpriced: ['maltExtract', 'energy'],
  });
  expect(costOf(amounts, 0.7, 0.4, {})).toBeUndefined();
});

describe('the account of a plan', () => {
  const prepared = prepareKit(defaultKit);
  const accountFor = (changes: Partial<typeof defaultRequest>) => {
    const planned = planFor({ ...defaultRequest, ...changes }, prepared);
    if (planned.kind === 'refused') throw new Error('refused');
    return { plan: planned.plan, account: accountOf(planned.plan, planned.course, prepared) };
  };

  test('closes its balances: what goes in is finished sugar, loss and steam, within 1 %', () => {
    const { plan, account } = accountFor({});
    const { charge, alkali } = plan.amounts;
    const spoons = 0.07;
    const went =
      charge.sucroseKg + charge.waterKg + charge.maltExtractKg + (alkali?.pureKg ?? 0) + (alkali?.waterKg ?? 0);
    const came = plan.yieldKg + account.lostKg + account.steamKg;
    // Spoonfuls of cold water (22 of 4.9 g) go in as well: up to this much steam comes from them.
    expect(came - went).toBeGreaterThan(0);
    expect(came - went).toBeLessThan(spoons + 0.06);
    expect(account.lostKg / (plan.yieldKg + account.lostKg)).toBeCloseTo(0.03, 6);
  });

  test('has a tray and a bath for hard sugar, let-down and neutraliser for pale syrup', () => {
    expect(accountFor({}).account).toMatchObject({ letDownKg: undefined, neutraliser: undefined });
    const { account, plan } = accountFor({ route: 'pale', form: 'syrup', syrupSolids: 0.75 });
    expect(account.tray).toBeUndefined();
    expect(account.bathKg).toBeUndefined();
    expect(account.neutraliser?.naohKg).toBeGreaterThan(0);
    // What neutralises leaves its sodium in what was poured: 22.990 / 39.997 of its mass.
    const sodiumG = 1000 * (account.neutraliser?.naohKg ?? 0) * (22.99 / 39.997);
    expect(account.sodiumGPerKg).toBeCloseTo(sodiumG / plan.yieldKg, 3);
    // Steam of the first hot portions comes on top in the pan.
    expect(account.letDownKg).toBeLessThan(plan.letDownWaterKg);
    expect(account.letDownKg).toBeGreaterThan(0.6 * plan.letDownWaterKg);
  });

  test('says what distilled water would change: less base, so more inversion', () => {
    expect(accountFor({}).account.distilled.invertedMore).toBeGreaterThan(0);
  });
});

test('a cook of sugar and water alone, where nothing is dissolved at first, comes to its end', () => {
  for (const alkalinityMgPerL of [0, 200]) {
    const prepared = prepareKit({ ...defaultKit, water: { ...defaultKit.water, alkalinityMgPerL } });
    const planned = planFor({ ...defaultRequest, maltExtractGPerKg: 0 }, prepared);
    if (planned.kind === 'refused') throw new Error('refused');
    const { distilled } = accountOf(planned.plan, planned.course, prepared);
    expect(distilled.colourFactor).toBeGreaterThan(0);
    expect(planned.course.temperatureC.every(Number.isFinite)).toBe(true);
  }
});
