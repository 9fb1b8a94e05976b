/**
 * Which cook a thermometer with a token sends to: one at a time. It is bound when it is let in, or later by a keeper, and
 * falls asleep when that cook ends: the same board is used again next month, and a token that was lost tells nothing of other cooks.
 */
import type { CookRecord } from '../../api/cook.ts';
import type { Device } from '../../api/device.ts';
import { Refusal } from '../problem.ts';
import { runningCooks } from '../store/cooks.ts';
import type { Store } from '../store/store.ts';
import type { Devices } from './devices.ts';

/** @param running cooks that have not ended, the newest first */
export function cookFor({ cook }: Device, running: readonly CookRecord[]): CookRecord | undefined {
  return running.find(({ id, mode }) => (cook === 'next' ? mode === 'live' : id === cook));
}

/** The same, from now on. @throws Refusal when there is none */
export async function bindToCook(device: Device, devices: Devices, { db }: Store): Promise<string> {
  const { id, name, cook } = device;
  const to = cookFor(device, await runningCooks(db));
  if (to) {
    await devices.bind(id, to.id);
    return to.id;
  }
  if (cook === 'next') throw new Refusal('which-cook', `No cook is running. ${name} sends into the next one.`);
  await devices.bind(id, null);
  throw new Refusal('asleep', `${name} is asleep: on the page Devices a keeper says which cook it sends to.`);
}
