/** Words of the core on the page, with their temperatures in the unit chosen there. */
import { degrees, type TemperatureUnit } from '../../parts/temperature.ts';

export function inUnitOf(text: string, unit: TemperatureUnit): string {
  return text.replace(/\b(\d+(?:\.\d+)?) °?C\b/g, (_, celsius: string) => degrees(Number(celsius), unit));
}

/** A clause as a sentence. */
export function sentence(clause: string, unit: TemperatureUnit): string {
  const spoken = inUnitOf(clause, unit);
  return `${spoken.charAt(0).toUpperCase()}${spoken.slice(1)}.`;
}
