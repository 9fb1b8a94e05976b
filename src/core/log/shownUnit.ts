/** Readings in the unit that their thermometer shows, where the cook has said that it is another than it declares. */
import type { Entry } from './corrections.ts';
import { readingAsReceived } from './readingAsReceived.ts';

type Readings = readonly Entry<'reading'>[];

/** @param readings in true order, as are what was said of units; of several that cover a reading the last said holds */
export function inShownUnit(readings: Readings, said: readonly Entry<'probeUnit'>[]): Readings {
  if (said.length === 0) return readings;
  const from = new Map(said.map((one) => [one, readings.find(({ id }) => id === one.body.from)?.timeS ?? one.timeS]));
  return readings.map((entry) => {
    const { body, timeS } = entry;
    const covers = said.findLast((one) => one.body.probe === body.probe && (from.get(one) ?? 0) <= timeS);
    if (!covers || covers.body.unit === body.unit) return entry;
    const { valueC, quality } = readingAsReceived(body.probe, body.raw, covers.body.unit);
    const byHand = body.quality === 'byHand' && valueC !== null;
    const shown = { ...body, valueC, quality: byHand ? body.quality : quality, unit: covers.body.unit };
    return { ...entry, body: shown, before: [...entry.before, body] };
  });
}
