/**
 * When poured sugar can be touched, put in a freezer and broken: a cast slab by conduction through its thickness (`slab.ts`), a
 * let-down syrup in its pan as one lump that loses heat as the pan does in the cook.
 */
import { syrupHeatCapacityJPerKgK } from '../matter/heatCapacity.ts';
import { requireRange } from '../matter/range.ts';
import type { LossLaw } from '../pan/losses.ts';
import type { PreparedKit } from '../pan/preparedKit.ts';
import type { Range } from '../twin/range.ts';
import { createSlab, type Slab, type SlabCase, stepS } from './slab.ts';

/** Not hot to the hand, C (common practice, no source; water of 54 C burns in 30 s, see Care). */
const handWarmC = 40;
/** Breaks dry from this far below the glass transition; nearer to it the surface turns sticky with time, K (assumed, set on the stages of candy). */
export const breaksBelowGlassK = 10;
/** Air of a household freezer, C (common practice, no source). */
const freezerC = -18;
/** A forecast of cooling is held good to this share, as the table that it is checked against. */
const uncertainty = 0.25;
/** What takes longer than this is not waited for, min. */
const longestMinutes = 24 * 60;

export interface CastCase extends SlabCase {
  readonly roomC: number;
}

/** All in minutes; from the pour unless said otherwise. */
export interface CastCooling {
  readonly thicknessM: number;
  readonly surfaceHandWarm: Range;
  /** Hand-warm all through: can be lifted, and go in a freezer. */
  readonly handWarm: Range;
  /** Cold and hard enough to break dry, left in the room; none when the room is too warm for it. */
  readonly breaksInRoom: Range | undefined;
  /** The same in a freezer, from when it went in hand-warm; none when not even a freezer makes it brittle. */
  readonly breaksInFreezer: Range | undefined;
}

/** Hottest temperature at which a candy both breaks dry and can be handled, C. */
function breakC(glassC: number): number {
  return Math.min(handWarmC, glassC - breaksBelowGlassK);
}

/** @param roomC 0 to 38 C: a hotter room never gives hand-warm candy */
function requireRoom(roomC: number): void {
  requireRange('room temperature (C)', roomC, 0, handWarmC - 2);
}

/**
 * Forecast for a slab of candy.
 *
 * @returns minutes, good to 25 % (assumed): free convection in a kitchen without draughts, a slab of even thickness
 * @throws RangeError naming a number outside its range; the room may have 0 to 38 C
 */
export function castCooling(cast: CastCase): CastCooling {
  const { roomC, glassC } = cast;
  requireRoom(roomC);
  const warm = createSlab(cast);
  const surface = minutesUntil(warm, roomC, surfaceOf, handWarmC);
  const handWarm = surface + minutesUntil(warm, roomC, hottestOf, handWarmC);
  const inRoom = handWarm + minutesUntil(warm, roomC, hottestOf, breakC(glassC));
  const chilled = createSlab(cast);
  minutesUntil(chilled, roomC, hottestOf, handWarmC);
  const inFreezer = minutesUntil(chilled, freezerC, hottestOf, breakC(glassC));
  return {
    thicknessM: warm.thicknessM,
    surfaceHandWarm: withDoubt(surface),
    handWarm: withDoubt(handWarm),
    breaksInRoom: withDoubtIfEver(inRoom),
    breaksInFreezer: withDoubtIfEver(inFreezer),
  };
}

const surfaceOf = ({ surfaceC }: Slab): number => surfaceC;
const hottestOf = ({ hottestC }: Slab): number => hottestC;

/** Cools until a temperature of the slab is down to a mark; infinite when it never is. */
function minutesUntil(slab: Slab, airC: number, temperatureOf: (slab: Slab) => number, markC: number): number {
  const most = (longestMinutes * 60) / stepS;
  for (let steps = 0; steps <= most; steps++) {
    if (temperatureOf(slab) <= markC) return (steps * stepS) / 60;
    if (airC >= markC) break;
    slab.step(airC);
  }
  return Number.POSITIVE_INFINITY;
}

function withDoubt(minutes: number): Range {
  return { low: (1 - uncertainty) * minutes, mid: minutes, high: (1 + uncertainty) * minutes };
}

function withDoubtIfEver(minutes: number): Range | undefined {
  return Number.isFinite(minutes) ? withDoubt(minutes) : undefined;
}

export interface PanCase {
  readonly massKg: number;
  /** Mass fraction of dry solids, 0.5 to 0.9. */
  readonly solids: number;
  readonly temperatureC: number;
}

/** Time step of the cooling in the pan, s. */
const panStepS = 20;

/**
 * Minutes until a syrup left in its pan, off the heat, is hand-warm. Heat goes by the pan's side and the surface, none by the bottom
 * and none by evaporation, so it errs on the slow side.
 *
 * @param prepared the kit, from `prepareKit`; its room may have 0 to 38 C
 * @returns minutes, good to 25 % (assumed)
 * @throws RangeError naming a number outside its range
 */
export function panCooling(prepared: PreparedKit, { massKg, solids, temperatureC }: PanCase): Range {
  const { roomC } = prepared.kit;
  requireRoom(roomC);
  requireRange('syrup mass (kg)', massKg, 0.01, 20);
  requireRange('solids (mass fraction)', solids, 0.5, 0.9);
  requireRange('syrup temperature (C)', temperatureC, 0, 200);
  let c = temperatureC;
  let seconds = 0;
  for (; c > handWarmC; seconds += panStepS) {
    const aboveK = c - roomC;
    const lostW = lawW(prepared.sideLoss, aboveK) + lawW(prepared.surfaceLoss, aboveK);
    c -= (panStepS * lostW) / (massKg * syrupHeatCapacityJPerKgK(solids, c) + prepared.panJPerK);
  }
  return withDoubt(seconds / 60);
}

function lawW({ linear, quadratic }: LossLaw, aboveRoomK: number): number {
  return aboveRoomK * (linear + quadratic * aboveRoomK);
}
