/** What roles may do, and when, in words. */
import type { DeviceRole } from '../../../api/device.ts';
import { momentText, timeText } from '../../parts/dayText.ts';

export const roleWords: Readonly<Record<DeviceRole, string>> = {
  keeper: 'Keeper: everything',
  cook: 'Cook: cooks, keeps records',
  reader: 'Guest: only looks on',
  probe: 'Thermometer: sends into one cook',
};

export const roleNames: Readonly<Record<DeviceRole, string>> = {
  keeper: 'Keeper',
  cook: 'Cook',
  reader: 'Guest',
  probe: 'Thermometer',
};

/** `today, 21:40`, or the day and the time. */
export function momentWords(moment: string, now = new Date()): string {
  const today = new Date(moment).toDateString() === now.toDateString();
  return today ? `today, ${timeText(moment)}` : momentText(moment);
}
