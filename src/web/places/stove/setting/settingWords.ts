/** How a hard sugar will behave in the room, in words. */
import type { Setting } from '../../../../core/lot/yield.ts';
import { degrees, type TemperatureUnit } from '../../../parts/temperature.ts';

/** Chances as people take them: of 10, and no more sure than the twin can be. */
function chance(share: number): string {
  const tenths = Math.round(10 * share);
  if (tenths >= 10) return 'more than 9 in 10';
  return tenths <= 0 ? 'less than 1 in 10' : `${tenths} in 10`;
}

/** The likeliest of the three first, then the others that count. */
export function settingWords({ breaksDry, turnsSticky, staysSticky }: Setting): string {
  const outcomes = [
    { share: breaksDry, says: 'snaps and breaks dry' },
    { share: turnsSticky, says: 'sets like glass, but its surface turns sticky with time' },
    { share: staysSticky, says: 'stays soft and sticky' },
  ].toSorted((a, b) => b.share - a.share);
  const [first, ...others] = outcomes.filter(({ share }, i) => i === 0 || share >= 0.05);
  if (!first) return '';
  const rest = others.map(({ share, says }) => `; ${says}: ${chance(share)}`).join('');
  return `Likeliest, it ${first.says}: ${chance(first.share)}${rest}.`;
}

export function glassWords({ glassC }: Setting, roomC: number, unit: TemperatureUnit): string {
  const [low, high] = [degrees(glassC.low, unit), degrees(glassC.high, unit)];
  return `Turns from glass to gum at ${low} to ${high} (glass transition); the room has ${degrees(roomC, unit)}.`;
}
