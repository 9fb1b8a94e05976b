/** How a sugar keeps in a room: glass, gum or syrup by its glass transition, and what the damp of the air does to it. */
import { ACTIVITY_MAX_SOLIDS, waterActivity, waterPerSolids } from '../../matter/activity.ts';
import { glassTransitionC } from '../../matter/glass.ts';
import { requireRange } from '../../matter/range.ts';
import { bracketedRoot } from '../../matter/root.ts';
import { type DrySolids, partlyInverted } from '../../matter/sugars.ts';
import type { Range } from '../../twin/range.ts';
import { breaksBelowGlassK } from '../cooling.ts';
import { invertShare } from '../known.ts';
import { rangeAround, sdOfRange, together } from '../measure/estimate.ts';
import type { Expected } from '../yield.ts';

export interface Room {
  readonly roomC: number;
  /** Relative humidity, 0 to 1. */
  readonly humidity: number;
}

export const roomRanges = { roomC: [-20, 38], humidity: [0.05, 0.95] } as const;

/**
 * How it is, by how far the room is above its glass transition: breaks dry; glass, but the surface turns sticky; gum that flows in days;
 * soft ball; syrup (bounds assumed, set on the stages of candy).
 */
export const standings = ['dry', 'tacky', 'sticky', 'soft', 'syrup'] as const;
export type Standing = (typeof standings)[number];
const warmerThan = { dry: -breaksBelowGlassK, tacky: 0, sticky: 20, soft: 60 } as const;

export interface Keeping {
  readonly glassC: Range;
  readonly standing: Standing;
  /** At the ends of what is known of its glass transition. */
  readonly between: readonly [Standing, Standing];
  /** Water activity of the sugar itself: in drier air it gives water off, in damper air it draws some. */
  readonly activity: number;
  readonly draws: boolean;
  /** How it ends up in this air, left open for as long as that takes, and the water that it then has (mass share). */
  readonly inTheEnd: Standing;
  readonly endWaterShare: number;
  /** Humidity above which it ends up sticky in a room so warm; 0 when it is so as it is. */
  readonly stickyAbove: number;
}

/** Error of the glass transition itself, K: the two published constants lie 3 to 5 K apart. */
const glassSdK = 4;

/** @throws RangeError for a room outside `roomRanges` */
export function keepingOf({ waterShare, inverted }: Pick<Expected, 'waterShare' | 'inverted'>, room: Room): Keeping {
  const { roomC, humidity } = room;
  requireRange('room temperature (C)', roomC, ...roomRanges.roomC);
  requireRange('humidity (share)', humidity, ...roomRanges.humidity);
  const dry = partlyInverted(invertShare(inverted.mid));
  const glassAt = (water: number, share = inverted.mid) =>
    glassTransitionC(1 - water, partlyInverted(invertShare(share)));
  const mid = glassAt(waterShare.mid);
  const byWater = sdOfRange({ low: glassAt(waterShare.high), mid, high: glassAt(waterShare.low) });
  const byInversion = sdOfRange({
    low: glassAt(waterShare.mid, inverted.high),
    mid,
    high: glassAt(waterShare.mid, inverted.low),
  });
  const glassC = rangeAround(mid, together(glassSdK, byWater, byInversion));
  const activity = waterActivity(Math.min(ACTIVITY_MAX_SOLIDS, 1 - waterShare.mid), roomC, dry);
  const endWater = waterPerSolids(humidity, roomC, dry);
  const endWaterShare = endWater / (1 + endWater);
  return {
    glassC,
    standing: standingAt(roomC - mid),
    between: [standingAt(roomC - glassC.high), standingAt(roomC - glassC.low)],
    activity,
    draws: humidity > activity,
    inTheEnd: standingAt(roomC - glassAt(endWaterShare)),
    endWaterShare,
    stickyAbove: stickyAbove(dry, roomC),
  };
}

function standingAt(aboveGlassK: number): Standing {
  return standings.find((each) => each === 'syrup' || aboveGlassK <= warmerThan[each]) ?? 'syrup';
}

/** Water activity at the water that brings the glass transition down to the room. */
function stickyAbove(dry: DrySolids, roomC: number): number {
  const glassOver = (water: number) => glassTransitionC(1 - water, dry) - roomC;
  const driest = 1 - ACTIVITY_MAX_SOLIDS;
  if (glassOver(driest) <= 0) return 0;
  const water = bracketedRoot(glassOver, driest, 0.5, 1e-6);
  return waterActivity(1 - water, roomC, dry);
}
