/**
 * A store that goes on when the browser has no room: what can't be written is held in memory, and written when there is
 * room again. Nothing that a person does is turned away for it.
 */
import type { CookStore, Storage } from './cookStore.ts';
import { merged } from './heldEvent.ts';
import { memoryStore } from './memoryStore.ts';

/** @param durable may refuse; after each refusal `storage` says why until a write goes well */
export function sturdyStore(durable: CookStore, memory: CookStore = memoryStore()): CookStore {
  let storage: Storage = 'ok';
  /** Cooks with something in memory alone. */
  const unwritten = new Set<string>();

  async function whetherWritten(write: () => Promise<unknown>): Promise<boolean> {
    try {
      for (const cook of unwritten) {
        await durable.put((await memory.read(cook)).held);
        for (const known of await memory.cooks()) if (known.id === cook) await durable.noteCook(known);
        unwritten.delete(cook);
      }
      await write();
      storage = 'ok';
      return true;
    } catch (error) {
      storage = (error as Error).name === 'QuotaExceededError' ? 'full' : 'memory only';
      return false;
    }
  }

  return {
    storage: () => storage,
    async append(drafts) {
      let held: Awaited<ReturnType<CookStore['append']>> = [];
      const write = async () => {
        held = await durable.append(drafts);
      };
      if (await whetherWritten(write)) return held;
      for (const { cook } of drafts) unwritten.add(cook);
      return memory.append(drafts);
    },
    async put(held) {
      if (await whetherWritten(() => durable.put(held))) return;
      for (const { event } of held) unwritten.add(event.cook);
      await memory.put(held);
    },
    async take(cook, held, lastSeq) {
      // What is lost of this can be had from the server again.
      if (!(await whetherWritten(() => durable.take(cook, held, lastSeq)))) await memory.take(cook, held);
    },
    async read(cook) {
      const inMemory = await memory.read(cook);
      const kept = await durable.read(cook).catch(() => ({ held: [], lastSeq: 0 }));
      const all = new Map(inMemory.held.map((one) => [one.event.id, one]));
      for (const one of kept.held) all.set(one.event.id, merged(one, all.get(one.event.id) ?? one));
      return { held: [...all.values()], lastSeq: kept.lastSeq };
    },
    async noteCook(cook) {
      if (await whetherWritten(() => durable.noteCook(cook))) return;
      unwritten.add(cook.id);
      await memory.noteCook(cook);
    },
    async cooks() {
      const kept = await durable.cooks().catch(() => []);
      const inMemory = (await memory.cooks()).filter(({ id }) => !kept.some((one) => one.id === id));
      return [...kept, ...inMemory];
    },
  };
}
