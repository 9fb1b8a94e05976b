/**
 * Which cook a thermometer with a token sends to: one at a time. It is bound when it is let in, or later by a keeper, and
 * falls asleep when that cook ends: the same board is used again next month, and a token that was lost tells nothing of other cooks.
 */
import type { Device } from '../../api/device.ts';
import { Refusal } from '../problem.ts';
import { findCook, runningCooks } from '../store/cooks.ts';
import type { Store } from '../store/store.ts';
import type { Devices } from './devices.ts';

/** @throws Refusal when there is none */
export async function cookOfProbe({ id, name, cook }: Device, devices: Devices, { db }: Store): Promise<string> {
  if (cook === null) return asleep(name);
  if (cook !== 'next') {
    const bound = await findCook(db, cook);
    if (bound?.ended === null) return cook;
    await devices.bind(id, null);
    return asleep(name);
  }
  const running = (await runningCooks(db)).find(({ mode }) => mode === 'live');
  if (!running) throw new Refusal('which-cook', `No cook is running. ${name} sends into the next one.`);
  await devices.bind(id, running.id);
  return running.id;
}

function asleep(name: string): never {
  throw new Refusal('asleep', `${name} is asleep: on the page Devices a keeper says which cook it sends to.`);
}
