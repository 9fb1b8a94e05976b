/** How a sugar keeps, in words. */
import { type Keeping, type Room, type Standing, standings } from '../../../../core/lot/keep/keeping.ts';
import { hoursToGain } from '../../../../core/lot/keep/sorption.ts';
import { syrupDensityKgPerM3 } from '../../../../core/matter/density.ts';
import { percent } from '../../../parts/figures.ts';

export const standingWords: Readonly<Record<Standing, string>> = {
  dry: 'hard, breaks dry',
  tacky: 'hard, but tacky on top',
  sticky: 'sticky gum that flows together',
  soft: 'soft mass',
  syrup: 'syrup',
};

export function standingSays({ standing, between: [best, worst] }: Keeping): string {
  const words = capital(standingWords[standing]);
  if (best === worst) return `${words}.`;
  const other = best === standing ? worst : best;
  return `${words}; it may also be: ${standingWords[other]}.`;
}

/** What the air does to it, left open. */
export function airSays({ draws, inTheEnd, endWaterShare, standing }: Keeping, { humidity }: Room): string {
  const air = `air of ${percent(humidity)} humidity`;
  if (!draws) return `In ${air} it gives water off and gets harder, from the surface in.`;
  const weeps = inTheEnd === 'syrup' ? 'weeps and runs away' : `ends as: ${standingWords[inTheEnd]}`;
  const worse = standings.indexOf(inTheEnd) > standings.indexOf(standing);
  return `Left open in ${air} it draws water and ${worse ? weeps : `stays as it is: ${standingWords[inTheEnd]}`}, with ${percent(endWaterShare)} water in the end.`;
}

export function packSays({ standing, stickyAbove }: Keeping): string {
  if (standing === 'soft' || standing === 'syrup') {
    return 'Keep it in a closed jar. Fill it warm, and let no water in: a wet spoon or drops under the lid are where growth begins.';
  }
  if (standing === 'sticky') {
    return 'It will not stay broken: wrap pieces singly in baking paper, or cast it in one slab and keep it in a freezer, in a bag with the air pressed out. Let it warm up closed, so that no water settles on it.';
  }
  return `Pack it as soon as it is hand-warm all through, in a jar or bag that closes tight, as full as can be, with a sachet of dry silica gel if there is one. Open it only where the air is drier than ${percent(stickyAbove)} humidity, or briefly.`;
}

/** Thickness of usual shards, m; both faces meet the air. */
const shardM = 0.006;
/** Gain of mass that makes a dry surface stick: about the water that lowers the glass transition by 10 K (derived). */
const stickyGain = 0.01;

/** At the earliest; no word where the air takes water from it. */
export function soonestSays({ activity, draws, standing }: Keeping, room: Room): string | undefined {
  if (!draws || standing === 'soft' || standing === 'syrup' || room.roomC < 0) return undefined;
  const kgPerM2 = (syrupDensityKgPerM3(0.97, 20) * shardM) / 2;
  const hours = hoursToGain(stickyGain, kgPerM2, activity, room);
  const shown = hours < 2 ? `${Math.round(hours * 60)} min` : `${hours.toFixed(0)} h`;
  return `Shards of 6 mm spread out in still air gain 1 % of water in ${shown} at the earliest. That is a bound by the air alone, not a forecast; their surface feels it sooner.`;
}

function capital(words: string): string {
  return `${words.charAt(0).toUpperCase()}${words.slice(1)}`;
}
