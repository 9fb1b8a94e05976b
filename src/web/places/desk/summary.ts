/** The plan in one sentence, and where it lands in a few words. */
import { clock, ebcOf, percent } from '../../parts/figures.ts';
import type { Bands, Picture } from '../../parts/panLine/picture.ts';
import { degrees, type TemperatureUnit } from '../../parts/temperature.ts';

export function summaryOf(picture: Picture, bands: Bands | undefined, unit: TemperatureUnit): string {
  const { plan, ends, hottestC, endS } = picture;
  const last = ends.at(-1);
  const landing = landingOf(bands);
  const between = landing && `, and ${landing}`;
  const alkali = plan.amounts.alkali ? `, takes alkali in ${plan.amounts.alkali.parts.length} parts` : '';
  const end = plan.request.form === 'hard' ? 'is cast' : 'is let down';
  return `The syrup climbs to ${degrees(hottestC, unit)}${alkali}, ${end} after ${clock(endS / 60)} with ${percent(last?.waterShare ?? 0)} water left${between}.`;
}

/** Empty until the draws are there. */
export function landingOf(bands: Bands | undefined): string {
  const colour = bands?.forecast.steps.at(-1)?.a430;
  return colour ? `should land between ${ebcOf(colour.low)} and ${ebcOf(colour.high)} EBC` : '';
}
