/** How settings of the levers are written. */
import { leverWords } from '../../../../core/planning/field/drawn/leverWords.ts';
import type { Lever } from '../../../../core/planning/field/levers.ts';
import { inUnit, type TemperatureUnit } from '../../../parts/temperature.ts';

export function unitOf(lever: Lever, unit: TemperatureUnit): string {
  const own = leverWords[lever].unit;
  return own === 'C' ? `°${unit}` : own;
}

/** A setting as a number in its unit: `5.2`, `25`, `140`. */
export function settingText(lever: Lever, value: number, unit: TemperatureUnit): string {
  return String(Number(settingIn(lever, value, unit).toFixed(1)));
}

/** The setting as it is counted on the page. */
export function settingIn(lever: Lever, value: number, unit: TemperatureUnit): number {
  return leverWords[lever].unit === 'C' ? inUnit(value, unit) : value;
}

export const settingSaid = (lever: Lever, value: number, unit: TemperatureUnit): string =>
  `${settingText(lever, value, unit)} ${unitOf(lever, unit)}`;
