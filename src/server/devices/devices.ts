/**
 * The devices that were let in. All of them are in memory, a handful, so that each request is judged without the store, and
 * one that is let out is let out at once: also of what it has open.
 */
import { randomBytes, randomUUID } from 'node:crypto';
import type { Device } from '../../api/device.ts';
import type { SteadyClock } from '../cooking/steadyClock.ts';
import { sha256 } from '../sha256.ts';
import { allDevices, bindDevice, keepDevice, noteSeen, removeDevice } from '../store/devices.ts';
import type { Store } from '../store/store.ts';
import type { DeviceTable } from '../store/tables.ts';
import { checkWords } from './checkWords.ts';
import type { Invited } from './invitations.ts';

/** When a device was last seen is written no oftener than this, ms. */
const seenEveryMs = 60_000;
const hourMs = 3_600_000;
/** 256 bits: nobody finds one by trying, and a plain hash of it tells nothing. */
const tokenBytes = 32;

export type Devices = Awaited<ReturnType<typeof openDevices>>;

export async function openDevices({ db }: Store, { nowMs }: SteadyClock) {
  /** By the hash of the token. How long a look-up takes tells at most something of a hash, and from a hash no token follows. */
  const known = new Map((await allDevices(db)).map((device) => [device.tokenHash, device]));
  const leaving = new Map<string, Set<() => void>>();
  const moment = (ms: number) => new Date(ms).toISOString();
  const isOver = ({ expires }: DeviceTable) => expires !== null && Date.parse(expires) <= nowMs();

  function cutOff({ id }: DeviceTable) {
    for (const leave of leaving.get(id) ?? []) leave();
    leaving.delete(id);
  }

  async function letOut(device: DeviceTable): Promise<void> {
    known.delete(device.tokenHash);
    cutOff(device);
    await removeDevice(db, device.id);
  }

  const ofId = (id: string) => [...known.values()].find((device) => device.id === id);

  return {
    list: (): Device[] => [...known.values()].filter((device) => !isOver(device)).map(shownOf),

    async letIn(name: string, { role, hours, cook }: Invited): Promise<{ token: string; device: Device }> {
      const token = randomBytes(tokenBytes).toString('base64url');
      const now = nowMs();
      const device: DeviceTable = {
        id: randomUUID(),
        name,
        role,
        tokenHash: sha256(token),
        paired: moment(now),
        lastSeen: moment(now),
        expires: hours === null ? null : moment(now + hours * hourMs),
        cook,
      };
      await keepDevice(db, device);
      known.set(device.tokenHash, device);
      return { token, device: shownOf(device) };
    },

    /** Whose token it is, noting that the device was seen; undefined for nobody's. */
    async ofToken(token: string): Promise<Device | undefined> {
      const device = known.get(sha256(token));
      if (!device || isOver(device)) return undefined;
      if (nowMs() - Date.parse(device.lastSeen) >= seenEveryMs) {
        device.lastSeen = moment(nowMs());
        // That it was seen is no reason to refuse it while the disk is full.
        await noteSeen(db, device.id, device.lastSeen).catch(() => {});
      }
      return shownOf(device);
    },

    /** Calls `leave` when the device is let out, until the function returned is called. */
    whenOut(id: string, leave: () => void): () => void {
      const all = leaving.get(id) ?? new Set();
      leaving.set(id, all.add(leave));
      return () => all.delete(leave);
    },

    ofId(id: string): Device | undefined {
      const device = ofId(id);
      return device && shownOf(device);
    },

    /** Binds a device to one cook, to the next or to none; what it has open of another ends. @returns whether there is such a device */
    async bind(id: string, cook: string | null): Promise<boolean> {
      const device = ofId(id);
      if (!device) return false;
      if (device.cook === cook) return true;
      await bindDevice(db, id, cook);
      device.cook = cook;
      if (device.role === 'reader') cutOff(device);
      return true;
    },

    /** @returns whether there was one */
    async letOut(id: string): Promise<boolean> {
      const device = ofId(id);
      if (device) await letOut(device);
      return device !== undefined;
    },

    /** Everybody but the device that asks for it. */
    async letOutAll(but: string | undefined): Promise<void> {
      for (const device of [...known.values()]) if (device.id !== but) await letOut(device);
    },

    /** Those whose time is over; to be called each second. */
    async letOutExpired(): Promise<void> {
      for (const device of [...known.values()].filter(isOver)) await letOut(device);
    },
  };
}

function shownOf({ tokenHash, ...device }: DeviceTable): Device {
  return { ...device, words: checkWords(tokenHash) };
}
