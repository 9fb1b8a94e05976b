/** Cooks kept as long as the page lasts, for a browser that keeps nothing or has no room left. */
import { newId } from '../newId.ts';
import { begunAmong, type CookStore, counted, type KeptCook } from './cookStore.ts';
import { type HeldEvent, merged } from './heldEvent.ts';

export function memoryStore(): CookStore {
  // A device of its own: a count that is forgotten must not go on under a name that is kept.
  const device = { id: newId(), count: 0 };
  const events = new Map<string, HeldEvent>();
  const places = new Map<string, number>();
  const cooks = new Map<string, KeptCook>();
  const put = (held: readonly HeldEvent[]) => {
    for (const one of held) events.set(one.event.id, one);
  };
  return {
    storage: () => 'memory only',
    async append(drafts) {
      const held = counted(drafts, device);
      device.count += held.length;
      put(held);
      for (const cook of begunAmong(held)) cooks.set(cook.id, cook);
      return held;
    },
    async put(held) {
      put(held);
    },
    async take(cook, held, lastSeq) {
      put(held.map((one) => merged(events.get(one.event.id) ?? one, one)));
      if (lastSeq !== undefined) places.set(cook, lastSeq);
    },
    async read(cook) {
      const held = [...events.values()].filter(({ event }) => event.cook === cook);
      return { held, lastSeq: places.get(cook) ?? 0 };
    },
    async noteCook(cook) {
      cooks.set(cook.id, cook);
    },
    cooks: async () => [...cooks.values()],
  };
}
