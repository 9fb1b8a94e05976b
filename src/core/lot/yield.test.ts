import { describe, expect, test } from 'vitest';
import { createHiddenPan } from '../pan/hiddenPan.ts';
import { defaultKit } from '../pan/kit.ts';
import { centralValues } from '../pan/model.ts';
import { prepareKit } from '../pan/preparedKit.ts';
import { contentsKg, dissolvedKg, place, stateSize } from '../pan/state.ts';
import { planFor } from '../planning/plan.ts';
import { defaultRequest, type PlanRequest } from '../planning/request.ts';
import { normalNumbers } from '../reactions/normal.ts';
import { amount, amountMassKg } from '../reactions/rates.ts';
import type { Seen } from '../twin/observe.ts';
import { createTwin } from '../twin/twin.ts';
import { lotOf } from './lot.ts';
import { drySolidsOf, pouredOf } from './yield.ts';

const prepared = prepareKit(defaultKit);
const values = centralValues(defaultKit);
const sucroseMol = 0.4 / amountMassKg[amount.sucrose];
const charge = { sucroseKg: 0.4, waterKg: 0.13, maltExtractKg: 0, citricAcidKg: 0 };

/** A pan of sugar and water, a share of the sugar inverted. */
function panOf(solids: number, inverted = 0): Seen {
  const y = new Float64Array(stateSize);
  y[place.sucrose] = sucroseMol * (1 - inverted);
  y[place.glucose] = y[place.fructose] = sucroseMol * inverted;
  y[place.waterKg] = (dissolvedKg(y) * (1 - solids)) / solids;
  return { y, values, ph: 5, temperatureC: 150 };
}

describe('setting', () => {
  const at = (solids: number, inverted: number, roomC = 22) =>
    pouredOf([panOf(solids, inverted)], charge, roomC).setting;

  test('sucrose with 3 % water has a glass transition of 34 C by the constants of Roos 1993, and is glass at 22 C', () => {
    const { glassC, staysSticky } = at(0.97, 0);
    expect(glassC.mid).toBeCloseTo(34, 0);
    expect(staysSticky).toBeLessThan(0.01);
  });

  test('hard sugar of 1 to 2 % water snaps dry; soft crack of 5 to 6 % stays sticky; full invert never sets', () => {
    expect(at(0.985, 0).breaksDry).toBeGreaterThan(0.95);
    expect(at(0.945, 0).staysSticky).toBeGreaterThan(0.8);
    expect(at(0.975, 1).staysSticky).toBe(1);
  });

  test('near the boundary it owns to not knowing: 18 C in the room or 26 C decide', () => {
    const { breaksDry, turnsSticky, staysSticky } = at(0.96, 0.05);
    expect(breaksDry + turnsSticky + staysSticky).toBeCloseTo(1, 12);
    expect(staysSticky).toBeGreaterThan(0.1);
    expect(staysSticky).toBeLessThan(0.9);
    expect(at(0.96, 0.05, 18).staysSticky).toBeLessThan(staysSticky);
    expect(at(0.96, 0.05, 26).staysSticky).toBeGreaterThan(staysSticky);
  });
});

test('dry solids add up to 1 whatever is in the pan, and malt extract counts as maltose and larger carbohydrates', () => {
  const { y } = panOf(0.97, 0.3);
  y[place.maltKg] = 0.01;
  y[place.caramel] = 0.05;
  y[place.mineralKg] = 0.002;
  const dry = drySolidsOf(y);
  expect(Object.values(dry).reduce((a, b) => a + b, 0)).toBeCloseTo(1, 12);
  expect(dry.maltose).toBeCloseTo(0.005 / dissolvedKg(y), 12);
  expect(dry.glucose).toBeGreaterThan((sucroseMol * 0.3 * amountMassKg[amount.glucose]) / dissolvedKg(y));
});

describe('a twin that has been through the planned cook of', () => {
  const cases: [string, PlanRequest][] = [
    ['hard sugar', defaultRequest],
    ['a syrup', { ...defaultRequest, form: 'syrup', route: 'bright', massKg: 0.5 }],
  ];

  test.each(cases)('%s expects what a hidden pan then yields, within a plausible range', (_, request) => {
    const made = planFor(request, prepared);
    if (made.kind !== 'plan') throw new Error('the default plan is refused');
    const { plan, course } = made;
    const twin = createTwin(prepared, plan.amounts.charge, { members: 32, seed: 2 });
    const truth = createHiddenPan(prepared, plan.amounts.charge, normalNumbers(11));
    let readS = 0;
    for (const { timeS, deed } of course.deeds) {
      for (; readS < timeS; readS += 20) {
        truth.moveTo(readS);
        const valueC = truth.reading();
        twin.take({ timeS: readS, observation: { kind: 'reading', valueC, byHand: false } });
      }
      truth.moveTo(timeS);
      truth.perform(deed);
      twin.take({ timeS, deed });
    }
    const poured = pouredOf(twin.members, plan.amounts.charge, defaultKit.roomC);
    const contents = contentsKg(truth.y);
    expect(poured.massKg.low).toBeLessThan(contents);
    expect(poured.massKg.mid / (0.97 * contents)).toBeGreaterThan(0.93);
    expect(poured.massKg.mid / (0.97 * contents)).toBeLessThan(1.07);
    expect(poured.massKg.mid / plan.yieldKg).toBeGreaterThan(0.85);
    expect(poured.massKg.mid / plan.yieldKg).toBeLessThan(1.15);
    for (const { low, mid, high } of [poured.massKg, poured.solids, poured.ebc, poured.icumsa, poured.temperatureC]) {
      expect(low).toBeLessThanOrEqual(mid);
      expect(mid).toBeLessThanOrEqual(high);
    }
    expect(poured.ebc.mid).toBeCloseTo(25 * poured.a430.mid, 6);
    expect(poured.solids.mid + poured.waterShare.mid).toBeCloseTo(1, 9);
    if (request.form === 'syrup') expect(poured.setting.staysSticky).toBe(1);
  });
});

test('a lot holds what was believed at the pour and the name without blanks around it', () => {
  const poured = pouredOf([panOf(0.97), panOf(0.96)], charge, 22);
  const lot = lotOf({
    id: 'a',
    name: ' Plum shards ',
    origin: 'cooked',
    alkali: null,
    cookId: null,
    planId: 'p',
    madeAt: '2030-01-01T10:00:00.000Z',
    form: 'hard',
    weighedKg: null,
    poured,
  });
  expect(lot).toMatchObject({ name: 'Plum shards', planId: 'p', weighedKg: null, form: 'hard' });
  expect(lot.expected.massKg).toEqual(poured.massKg);
  expect(Object.keys(lot.expected)).not.toContain('setting');
  expect(JSON.parse(JSON.stringify(lot))).toEqual(lot);
});
