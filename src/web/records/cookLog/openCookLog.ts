/** The logs of this browser: begun, opened and listed. */
import type { Begun } from '../../../core/log/bodies.ts';
import type { LogEvent } from '../../../core/log/event.ts';
import { newId } from '../newId.ts';
import { onPassChange } from '../pass.ts';
import { type CookLog, cookLog, type Tabs } from './cookLog.ts';
import { askTime, cookServer } from './cookServer.ts';
import { begunAmong, type CookStore, type EventDraft, type KeptCook } from './cookStore.ts';
import { browserClocks } from './deviceClock.ts';
import type { HeldEvent } from './heldEvent.ts';
import { indexedStore } from './indexedStore.ts';
import { memoryStore } from './memoryStore.ts';
import { sturdyStore } from './sturdyStore.ts';
import { type Device, device } from './thisDevice.ts';
import { claimWriter, writerName } from './writer.ts';

let opened: Promise<CookStore> | undefined;
function browserStore(): Promise<CookStore> {
  opened ??= indexedStore().then((durable) => sturdyStore(durable), memoryStore);
  return opened;
}

let own: Device | undefined;
function thisDevice(): Device {
  own ??= device(askTime);
  return own;
}

/**
 * Opens the log of a cook that began here, or on another device that the server knows. Close it before the page opens the
 * same cook again: of two logs of one cook only one may write.
 */
export async function openCookLog(cook: string): Promise<CookLog> {
  return cookLog({
    cook,
    store: await browserStore(),
    server: cookServer(cook),
    device: thisDevice(),
    clocks: browserClocks,
    tabs: tabsOf(cook),
    claimWriter,
    onReturn,
    random: Math.random,
  });
}

/** Begins a cook, with or without a server: its first event is kept here, and goes to the server when there is one. */
export async function beginCook(begun: Begun): Promise<CookLog> {
  const cook = newId();
  const store = await browserStore();
  // A browser that is short of room then asks before it throws a cook away; a refusal changes nothing.
  void navigator.storage?.persist?.().catch(() => {});
  await store.append([thisDevice().draft(cook, 'begun', begun)]);
  return openCookLog(cook);
}

/** Keeps a cook that is over, and that another clock made, as this device's own. */
export async function keepHere(drafts: readonly EventDraft[]): Promise<void> {
  const store = await browserStore();
  const [begun] = begunAmong(await store.append(drafts));
  if (begun) await store.noteCook({ ...begun, ended: 'done' });
}

/** The cooks that this device holds, the newest first. */
export async function cooksHere(): Promise<readonly KeptCook[]> {
  const cooks = await (await browserStore()).cooks();
  return cooks.sort((a, b) => (a.beganAt < b.beganAt ? 1 : -1));
}

/** What this device holds of a cook, without opening its log: to look at, not to write. */
export async function eventsHere(cook: string): Promise<readonly LogEvent[]> {
  return (await (await browserStore()).read(cook)).held.map(({ event }) => event);
}

function tabsOf(cook: string): Tabs {
  const channel = new BroadcastChannel(writerName(cook));
  let isOpen = true;
  return {
    tell(held) {
      // The answer to what was sent last may come after the log was closed.
      if (isOpen && held.length > 0) channel.postMessage(held);
    },
    listen(told) {
      channel.onmessage = ({ data }: MessageEvent<HeldEvent[]>) => told(data);
      return () => {
        isOpen = false;
        channel.close();
      };
    },
  };
}

function onReturn(back: () => void): () => void {
  const ifSeen = () => document.visibilityState === 'visible' && back();
  window.addEventListener('online', back);
  window.addEventListener('pageshow', back);
  document.addEventListener('visibilitychange', ifSeen);
  const stop = onPassChange(back);
  return () => {
    stop();
    window.removeEventListener('online', back);
    window.removeEventListener('pageshow', back);
    document.removeEventListener('visibilitychange', ifSeen);
  };
}
