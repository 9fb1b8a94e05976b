/** A clause of the core as a sentence of the page, with its temperatures in the unit chosen there. */
import { degrees, type TemperatureUnit } from '../../parts/temperature.ts';

export function sentence(clause: string, unit: TemperatureUnit): string {
  const spoken = clause.replace(/\b(\d+(?:\.\d+)?) °?C\b/g, (_, celsius: string) => degrees(Number(celsius), unit));
  return `${spoken.charAt(0).toUpperCase()}${spoken.slice(1)}.`;
}
