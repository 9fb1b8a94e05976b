/** What comes out of the pan, as the twin believes it at the pour: how much, how wet, how dark, and whether it sets hard. */
import { expectedHueIndex } from '../colour/hueIndex.ts';
import { specificFromRating } from '../colour/rating.ts';
import { ebcFromA430, icumsaFromSpecific, srmFromA430 } from '../colour/scales.ts';
import { glassTransitionC } from '../matter/glass.ts';
import type { DrySolids } from '../matter/sugars.ts';
import { pouredKg, stuckShare } from '../pan/poured.ts';
import { dissolvedKg, place } from '../pan/state.ts';
import type { Charge } from '../pan/steps.ts';
import { amount, amountMassKg } from '../reactions/rates.ts';
import type { Seen } from '../twin/observe.ts';
import { type Range, rangeOf } from '../twin/range.ts';
import { unseenOf } from '../twin/unseen.ts';
import { breaksBelowGlassK } from './cooling.ts';

/** Dry malt extract as the glass sees it (assumed: half maltose, half larger carbohydrates). */
const maltParts = { maltose: 0.5, dextrin: 0.5 };
/** Standard deviation of the glass transition itself at 1 to 5 % water, K: the two published constants lie 3 to 5 K apart. */
const glassSdK = 4;
/** Errors of the glass transition that are each as likely: medians of ten slices of a normal distribution, in standard deviations. */
const slices = [-1.645, -1.036, -0.674, -0.385, -0.126, 0.126, 0.385, 0.674, 1.036, 1.645];

/** Names of what is expected of a lot. Masses in kg, shares 0 to 1, A430 per cm of a 10 % w/w solution, ICUMSA units at 420 nm. */
export const expectedNames = ['massKg', 'waterShare', 'inverted', 'a430', 'ebc', 'srm', 'icumsa'] as const;
export type ExpectedName = (typeof expectedNames)[number];
export type Expected = Readonly<Record<ExpectedName, Range>>;

/** How the sugar behaves at room temperature; the three shares add up to 1. */
export interface Setting {
  readonly glassC: Range;
  /** Probability that it is hard and breaks dry; that it is glassy, but turns sticky on top; that it stays soft and sticky. */
  readonly breaksDry: number;
  readonly turnsSticky: number;
  readonly staysSticky: number;
}

export interface Poured extends Expected {
  readonly solids: Range;
  readonly temperatureC: Range;
  readonly setting: Setting;
}

/**
 * @param members the twin's pans at the moment of the pour
 * @param charge what the pan was filled with
 * @param roomC temperature that the sugar is kept at
 * @returns ranges over the members; the mass also over what may cling to the pan, the setting over the error of the glass transition
 */
export function pouredOf(members: readonly Seen[], charge: Charge, roomC: number): Poured {
  const each = members.map((member, i) => expectedOf(member, charge, clinging((i + 0.5) / members.length)));
  const range = (name: ExpectedName) => rangeOf(each.map((one) => one[name]));
  const expected = Object.fromEntries(expectedNames.map((name) => [name, range(name)])) as Record<ExpectedName, Range>;
  return {
    ...expected,
    solids: rangeOf(each.map(({ waterShare }) => 1 - waterShare)),
    temperatureC: rangeOf(members.map(({ temperatureC }) => temperatureC)),
    setting: settingAt(members, roomC),
  };
}

/** Members come in no order, so their places serve to spread what clings evenly. */
function clinging(part: number): number {
  return stuckShare.least + part * (stuckShare.most - stuckShare.least);
}

function expectedOf(seen: Seen, charge: Charge, stuck: number): Record<ExpectedName, number> {
  const { waterShare, inverted, a430 } = unseenOf(seen, charge);
  const ebc = ebcFromA430(a430);
  const specific430 = specificFromRating(ebc, 'tenPercentByWeight');
  const hue = expectedHueIndex(specific430, maillardShare(seen.y)).mean;
  return {
    massKg: pouredKg(seen.y, stuck),
    waterShare: Math.max(0, waterShare),
    inverted: Math.min(1, Math.max(0, inverted)),
    a430,
    ebc,
    srm: srmFromA430(a430),
    icumsa: icumsaFromSpecific(specific430, hue),
  };
}

function maillardShare(y: Float64Array): number {
  const pigment = y[place.melanoidin] + y[place.caramel];
  return pigment > 0 ? Math.min(1, Math.max(0, y[place.melanoidin] / pigment)) : 0;
}

/**
 * What the dry solids of a pan are made of, as far as the glass transition is concerned. What became of the sugars, and the minerals,
 * count as invert sugar: pigments stiffen a glass and small fragments soften it, and nobody has measured by how much (assumed).
 */
export function drySolidsOf(y: Float64Array): DrySolids {
  const kg = (name: 'sucrose' | 'glucose' | 'fructose') => Math.max(0, y[amount[name]]) * amountMassKg[amount[name]];
  const total = dissolvedKg(y);
  const known = { sucrose: kg('sucrose'), glucose: kg('glucose'), fructose: kg('fructose'), malt: y[place.maltKg] };
  const rest = Math.max(0, total - known.sucrose - known.glucose - known.fructose - known.malt);
  const parts = {
    sucrose: known.sucrose,
    glucose: known.glucose + rest / 2,
    fructose: known.fructose + rest / 2,
    maltose: maltParts.maltose * known.malt,
    dextrin: maltParts.dextrin * known.malt,
  };
  const sum = Object.values(parts).reduce((a, b) => a + b, 0);
  return {
    sucrose: parts.sucrose / sum,
    glucose: parts.glucose / sum,
    fructose: parts.fructose / sum,
    maltose: parts.maltose / sum,
    dextrin: parts.dextrin / sum,
  };
}

/** Glass transition of each member against the room, each with ten errors of its own. */
function settingAt(members: readonly Seen[], roomC: number): Setting {
  const glass = members.flatMap(({ y }) => {
    const solids = dissolvedKg(y) / (dissolvedKg(y) + Math.max(0, y[place.waterKg]));
    const middleC = glassTransitionC(solids, drySolidsOf(y));
    return slices.map((slice) => middleC + glassSdK * slice);
  });
  const share = (holds: (glassC: number) => boolean) => glass.filter(holds).length / glass.length;
  const breaksDry = share((glassC) => roomC <= glassC - breaksBelowGlassK);
  const staysSticky = share((glassC) => roomC > glassC);
  return { glassC: rangeOf(glass), breaksDry, turnsSticky: 1 - breaksDry - staysSticky, staysSticky };
}
