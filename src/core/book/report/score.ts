/** What was done to the pan, as a score below its line: numbers of the dial, dots for water, wedges for parts of the alkali. */
import type { TimedDeed } from '../../pan/steps.ts';
import { type Frame, railsOf, short } from './panFrame.ts';

/** Two numbers of the dial closer than this would touch. */
const numberWidth = 13;

export function score(deeds: readonly TimedDeed[], { x, size }: Frame): string {
  const rails = railsOf(size);
  let lastX = Number.NEGATIVE_INFINITY;
  return deeds
    .map(({ timeS, deed }) => {
      const place = x(timeS);
      if (deed.kind !== 'heat') return given(deed.kind, place, rails.given);
      if (place - lastX < numberWidth) return '';
      lastX = place;
      return `<text x="${short(place)}" y="${rails.dial}" text-anchor="middle">${Number(deed.notch.toFixed(1))}</text>`;
    })
    .join('');
}

/** Nothing for a deed that gives nothing. */
export function given(kind: TimedDeed['deed']['kind'], x: number, y: number): string {
  if (kind === 'water') return `<circle class="deed" cx="${short(x)}" cy="${y}" r="2.6"/>`;
  if (kind === 'alkali') return `<path class="deed" d="M${short(x)} ${y + 5}l-4.5-10h9z"/>`;
  return '';
}
