/** Temperatures as they are shown. */
export type TemperatureUnit = 'C' | 'F';

export function inUnit(celsius: number, unit: TemperatureUnit): number {
  return unit === 'C' ? celsius : celsius * 1.8 + 32;
}

/** `137 °C` or `279 °F`. */
export function degrees(celsius: number, unit: TemperatureUnit): string {
  return `${inUnit(celsius, unit).toFixed(0)} °${unit}`;
}

export function fromUnit(shown: number, unit: TemperatureUnit): number {
  return unit === 'C' ? shown : (shown - 32) / 1.8;
}
