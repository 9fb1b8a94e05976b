/** The checks of a kit, each from what was read to what it teaches; nothing is kept by asking. */
import type { Kit } from '../../pan/kit.ts';
import type { Learned, Measured } from '../../pan/learned.ts';
import type { ModelParameter } from '../../pan/physics.ts';
import { type Told, taughtBy, toldOf } from '../taught.ts';
import type { Estimate } from './estimate.ts';
import { type Air, boilingWaterOffset, iceOffset } from './fixedPoints.ts';
import { type Heating, heatingTest } from './heating.ts';
import { type LagCheck, lagCheck, type Sample } from './lag.ts';
import { type HeatCurve, heatCurve } from './settings.ts';
import { type Spoons, spoonWeighing } from './spoons.ts';
import type { HeatingRun } from './waterPan.ts';

export const checkKinds = ['boilingWater', 'ice', 'lag', 'spoons', 'heating', 'dial'] as const;
export type CheckKind = (typeof checkKinds)[number];

/** What was read. */
export type CheckEntry =
  | {
      readonly kind: 'boilingWater';
      readonly readingsC: readonly number[];
      readonly air: Air;
      readonly resolutionC: number;
    }
  | { readonly kind: 'ice'; readonly readingsC: readonly number[]; readonly resolutionC: number }
  | { readonly kind: 'lag'; readonly samples: readonly Sample[]; readonly fromC: number }
  | { readonly kind: 'spoons'; readonly spoonfulsKg: readonly number[] }
  | { readonly kind: 'heating' | 'dial'; readonly runs: readonly HeatingRun[] };

/** What the check says by itself, by its kind. */
export type Found =
  | { readonly kind: 'boilingWater' | 'ice'; readonly offsetC: Estimate }
  | ({ readonly kind: 'lag' } & LagCheck)
  | ({ readonly kind: 'spoons' } & Spoons)
  | ({ readonly kind: 'heating' } & Heating)
  | { readonly kind: 'dial'; readonly heating: Heating; readonly curve: HeatCurve };

export interface Checked {
  readonly found: Found;
  /** What is known of the kit with it. */
  readonly learned: Learned;
}

/** Where thermometers are needed, C; and by how much more they err for each C away from where they were checked (assumed: 0.5 K in 100). */
const cookedAtC = 130;
const errsMorePerC = 0.005;

/**
 * @param at when it was done, RFC 3339 in UTC
 * @throws RangeError when there is too little to go by, or a number can't be
 */
export function checkKit(kit: Kit, entry: CheckEntry, at?: string): Checked {
  const found = foundBy(kit, entry);
  const { told, measured } = toldBy(kit, found);
  const observations = observationsOf(entry);
  const learned = taughtBy(kit, told, { kind: 'check', name: entry.kind, observations, measured, ...(at && { at }) });
  return { found, learned };
}

function foundBy(kit: Kit, entry: CheckEntry): Found {
  switch (entry.kind) {
    case 'boilingWater':
      return { kind: entry.kind, offsetC: boilingWaterOffset(entry.readingsC, entry.air, entry.resolutionC) };
    case 'ice':
      return { kind: entry.kind, offsetC: iceOffset(entry.readingsC, entry.resolutionC) };
    case 'lag':
      return { kind: entry.kind, ...lagCheck(entry.samples, entry.fromC) };
    case 'spoons':
      return { kind: entry.kind, ...spoonWeighing(entry.spoonfulsKg, kit.spoonM3) };
    case 'heating':
      return { kind: entry.kind, ...heatingTest(kit, entry.runs) };
    case 'dial':
      return { kind: entry.kind, heating: heatingTest(kit, entry.runs), curve: curveOf(kit, entry.runs) };
  }
}

/** Each setting by a test of its own. */
function curveOf(kit: Kit, runs: readonly HeatingRun[]): HeatCurve {
  const notchOf = ({ settings }: HeatingRun) => Math.max(...settings.map(({ notch }) => notch));
  const notches = [...new Set(runs.map(notchOf))].toSorted((a, b) => a - b);
  return heatCurve(
    notches.map((notch) => {
      const { topW } = heatingTest(
        kit,
        runs.filter((run) => notchOf(run) === notch),
      );
      const share = notch / kit.stove.notches;
      return { notch, powerW: { ...topW, value: topW.value * share, sd: topW.sd * share } };
    }),
  );
}

interface Telling {
  readonly told: Told;
  readonly measured: readonly Measured[];
}

function toldBy(kit: Kit, found: Found): Telling {
  switch (found.kind) {
    case 'boilingWater':
      return one(kit, 'thermometerOffsetC', found.offsetC, errsMorePerC * (cookedAtC - 100));
    case 'ice':
      return one(kit, 'thermometerOffsetC', found.offsetC, errsMorePerC * cookedAtC);
    case 'lag':
      return one(kit, 'thermometerLagS', found.lagS);
    case 'spoons':
      return one(kit, 'spoonFactor', found.factor);
    case 'heating':
      return { told: found.told, measured: heatingMeasured(found) };
    case 'dial': {
      const { heating, curve } = found;
      if (curve.even) return { told: heating.told, measured: heatingMeasured(heating) };
      // A dial that is not even has no power of its own: its scatter counts, and what else the tests told is left.
      const topW = { value: curve.perNotchW.value * kit.stove.notches, sd: curve.perNotchW.sd * kit.stove.notches };
      const share = 1 / kit.stove.ratedPowerW;
      const low = curve.perNotchW.low * kit.stove.notches * share;
      const high = curve.perNotchW.high * kit.stove.notches * share;
      const efficiency = { value: topW.value * share, sd: topW.sd * share };
      return {
        told: toldOf(kit, 'stoveEfficiency', efficiency),
        measured: [{ name: 'stoveEfficiency', low, mid: efficiency.value, high }],
      };
    }
  }
}

/** @param apart standard uncertainty of what is used from what was checked */
function one(kit: Kit, name: ModelParameter, { value, sd, low, high }: Estimate, apart = 0): Telling {
  return { told: toldOf(kit, name, { value, sd: Math.hypot(sd, apart) }), measured: [{ name, low, mid: value, high }] };
}

/** What hardly narrowed was not measured. */
const hardlyTold = 0.8;

function heatingMeasured(heating: Heating): readonly Measured[] {
  return (['stoveEfficiency', 'stoveLagS', 'lossFactor'] as const).flatMap((name) => {
    const { value, low, high } = heating[name];
    return heating.left[name] < hardlyTold ? [{ name, low, mid: value, high }] : [];
  });
}

function observationsOf(entry: CheckEntry): number {
  switch (entry.kind) {
    case 'boilingWater':
    case 'ice':
      return entry.readingsC.length;
    case 'lag':
      return entry.samples.length;
    case 'spoons':
      return entry.spoonfulsKg.length;
    default:
      return entry.runs.reduce((sum, { readings }) => sum + readings.length, 0);
  }
}
