/** Devices in the store. */
import type { Kysely } from 'kysely';
import type { DeviceTable, Tables } from './tables.ts';

export function allDevices(db: Kysely<Tables>): Promise<DeviceTable[]> {
  return db.selectFrom('device').selectAll().orderBy('paired').orderBy('id').execute();
}

export async function keepDevice(db: Kysely<Tables>, device: DeviceTable): Promise<void> {
  await db.insertInto('device').values(device).execute();
}

export async function noteSeen(db: Kysely<Tables>, id: string, lastSeen: string): Promise<void> {
  await db.updateTable('device').set({ lastSeen }).where('id', '=', id).execute();
}

export async function bindDevice(db: Kysely<Tables>, id: string, cook: string | null): Promise<void> {
  await db.updateTable('device').set({ cook }).where('id', '=', id).execute();
}

export async function removeDevice(db: Kysely<Tables>, id: string): Promise<void> {
  await db.deleteFrom('device').where('id', '=', id).execute();
}
