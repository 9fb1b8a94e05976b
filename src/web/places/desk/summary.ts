/** The plan in one sentence. */
import { clock, ebcOf, percent } from '../../parts/figures.ts';
import type { Bands, Picture } from '../../parts/panLine/picture.ts';
import { degrees, type TemperatureUnit } from '../../parts/temperature.ts';

export function summaryOf(picture: Picture, bands: Bands | undefined, unit: TemperatureUnit): string {
  const { plan, ends, hottestC, endS } = picture;
  const last = ends.at(-1);
  const colour = bands?.forecast.steps.at(-1)?.a430;
  const between = colour ? `, and should land between ${ebcOf(colour.low)} and ${ebcOf(colour.high)} EBC` : '';
  const alkali = plan.amounts.alkali ? `, takes alkali in ${plan.amounts.alkali.parts.length} parts` : '';
  const end = plan.request.form === 'hard' ? 'is cast' : 'is let down';
  return `The syrup climbs to ${degrees(hottestC, unit)}${alkali}, ${end} after ${clock(endS / 60)} with ${percent(last?.waterShare ?? 0)} water left${between}.`;
}
