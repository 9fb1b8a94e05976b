/** What roles may do, and when, in words. */
import type { DeviceRole } from '../../../api/device.ts';

export const roleWords: Readonly<Record<DeviceRole, string>> = {
  keeper: 'Keeper: everything',
  cook: 'Cook: cooks, keeps records',
  reader: 'Guest: only looks on',
  probe: 'Thermometer: sends readings',
};

export const roleNames: Readonly<Record<DeviceRole, string>> = {
  keeper: 'Keeper',
  cook: 'Cook',
  reader: 'Guest',
  probe: 'Thermometer',
};

/** `today, 21:40`, or the day. */
export function momentWords(moment: string, now = new Date()): string {
  const date = new Date(moment);
  const time = date.toLocaleTimeString([], { hour: '2-digit', minute: '2-digit' });
  return date.toDateString() === now.toDateString()
    ? `today, ${time}`
    : `${date.toLocaleDateString([], { day: 'numeric', month: 'short' })}, ${time}`;
}
