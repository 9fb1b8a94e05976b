/** What a device is let in for, as a choice: the cook that a thermometer sends to, or that a guest sees. */
import type { CookRecord } from '../../../api/cook.ts';
import type { DeviceRole } from '../../../api/device.ts';
import { goingOn } from './useCooks.ts';
import { momentWords } from './words.ts';

type Option = readonly [value: string, words: string];

/** Stands for null, which no choice has as a value. */
const none = 'none';

export const boundLabels: Readonly<Partial<Record<DeviceRole, string>>> = {
  probe: 'It sends to',
  reader: 'It sees',
};

/** @param bound what is chosen now, so that it is in the list however old it is */
export function boundOptions(role: DeviceRole, cooks: readonly CookRecord[], bound: string | null = null): Option[] {
  const known = cooks.map(({ id, name, begun }): Option => [id, `${name}, ${momentWords(begun)}`]);
  const isOther = bound !== null && bound !== 'next' && !cooks.some(({ id }) => id === bound);
  const other: Option[] = isOther ? [[bound, 'An older cook']] : [];
  if (role === 'reader') return [...known, ...other, [none, 'All cooks and records']];
  const running = known.filter((_, at) => cooks[at]?.ended === null && cooks[at]?.mode === 'live');
  return [['next', 'The next cook'], ...running, ...other, [none, 'Nothing: it sleeps']];
}

/** What somebody most likely means. */
export function boundAtFirst(role: DeviceRole, cooks: readonly CookRecord[]): string {
  return goingOn(cooks)?.id ?? (role === 'probe' ? 'next' : (cooks[0]?.id ?? none));
}

export const boundOf = (choice: string): string | null => (choice === none ? null : choice);
export const choiceOf = (bound: string | null): string => bound ?? none;
