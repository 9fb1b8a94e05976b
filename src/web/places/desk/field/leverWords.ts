/** The levers of the field as they are spoken of, and how their settings are written. */
import type { Lever } from '../../../../core/planning/field/levers.ts';
import { inUnit, type TemperatureUnit } from '../../../parts/temperature.ts';

interface LeverWords {
  readonly name: string;
  /** What more of it is called, along an axis. */
  readonly more: string;
  readonly unit: 'g/kg' | 'min' | 'C';
}

export const leverWords: Readonly<Record<Lever, LeverWords>> = {
  alkaliGPerKg: { name: 'Alkali dose', more: 'more alkali', unit: 'g/kg' },
  maltExtractGPerKg: { name: 'Malt extract', more: 'more malt extract', unit: 'g/kg' },
  invertMinutes: { name: 'Inverting hold', more: 'longer inverting', unit: 'min' },
  brownC: { name: 'Browning heat', more: 'hotter browning', unit: 'C' },
  brownMinutes: { name: 'Browning hold', more: 'longer browning', unit: 'min' },
  roastC: { name: 'Roasting heat', more: 'hotter roast', unit: 'C' },
  roastMinutes: { name: 'Roasting hold', more: 'longer roast', unit: 'min' },
};

export function unitOf(lever: Lever, unit: TemperatureUnit): string {
  const own = leverWords[lever].unit;
  return own === 'C' ? `°${unit}` : own;
}

/** A setting as a number in its unit: `5.2`, `25`, `140`. */
export function settingText(lever: Lever, value: number, unit: TemperatureUnit): string {
  return String(Number((leverWords[lever].unit === 'C' ? inUnit(value, unit) : value).toFixed(1)));
}

export const settingSaid = (lever: Lever, value: number, unit: TemperatureUnit): string =>
  `${settingText(lever, value, unit)} ${unitOf(lever, unit)}`;
