/** What keeps cooks in this browser. Events that the device made are in it before anybody is told of them. */
import type { Begun } from '../../../core/log/bodies.ts';
import type { LogEvent } from '../../../core/log/event.ts';
import { type HeldEvent, mine } from './heldEvent.ts';

/** An event without the device's name and count, which the store gives: it alone can count over all tabs. */
export type EventDraft = Omit<LogEvent, 'device' | 'deviceSeq'>;

export interface KeptCook {
  readonly id: string;
  readonly name: string;
  readonly mode: Begun['mode'];
  readonly beganAt: string;
  readonly ended: 'done' | 'abandoned' | null;
}

export interface KeptLog {
  readonly held: readonly HeldEvent[];
  /** Place up to which all events of the server are here. */
  readonly lastSeq: number;
}

/** Whether what is written lasts: until the page is closed only, if the browser has no room or no storage. */
export type Storage = 'ok' | 'full' | 'memory only';

export interface CookStore {
  storage(): Storage;
  /** Writes new events of this device, all or none; a cook begins with its first. */
  append(drafts: readonly EventDraft[]): Promise<HeldEvent[]>;
  /** Writes events as they stand now, whatever was kept of them. */
  put(held: readonly HeldEvent[]): Promise<void>;
  /** Adds what is known of events to what is kept of them, and notes the place reached. */
  take(cook: string, held: readonly HeldEvent[], lastSeq?: number): Promise<void>;
  read(cook: string): Promise<KeptLog>;
  noteCook(cook: KeptCook): Promise<void>;
  cooks(): Promise<KeptCook[]>;
}

export interface DeviceCount {
  readonly id: string;
  /** Events made so far. */
  readonly count: number;
}

/** The drafts as events of a device that has made `count` so far. */
export function counted(drafts: readonly EventDraft[], { id, count }: DeviceCount): HeldEvent[] {
  return drafts.map((draft, place) => mine({ ...draft, device: id, deviceSeq: count + place + 1 }));
}

/** The cooks that begin among these events. */
export function begunAmong(held: readonly HeldEvent[]): KeptCook[] {
  return held.flatMap(({ event }) => {
    if (event.kind !== 'begun') return [];
    const { mode, request } = event.body as Begun;
    const { name } = request as { readonly name: string };
    return [{ id: event.cook, name, mode, beganAt: event.tDevice, ended: null }];
  });
}
