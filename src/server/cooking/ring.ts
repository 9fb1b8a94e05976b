/** Events that could not be written, held in memory until they can be: a bounded number of them, the oldest given up first. */
import type { LogEvent } from '../../core/log/event.ts';
import type { Incoming } from '../store/events.ts';

export interface RingLimits {
  readonly events: number;
  readonly characters: number;
}

/** More than four hours of a reading each second. */
const ringLimits: RingLimits = { events: 20_000, characters: 64e6 };

export interface Ring {
  /** Holds events that it does not hold yet, and returns those. */
  hold(incoming: readonly Incoming[]): LogEvent[];
  /** The oldest events that belong to one cook, up to a number. */
  oldest(most: number): readonly Incoming[];
  release(incoming: readonly Incoming[]): void;
  readonly size: number;
  readonly dropped: number;
}

export function createRing(limits: RingLimits = ringLimits): Ring {
  const held = new Map<string, { readonly incoming: Incoming; readonly characters: number }>();
  let characters = 0;
  let dropped = 0;
  const remove = (id: string) => {
    characters -= held.get(id)?.characters ?? 0;
    held.delete(id);
  };
  return {
    hold(incoming) {
      const fresh = incoming.filter(({ event }) => !held.has(event.id));
      for (const one of fresh) {
        const size = JSON.stringify(one.event).length;
        held.set(one.event.id, { incoming: one, characters: size });
        characters += size;
        while (held.size > limits.events || characters > limits.characters) {
          remove(held.keys().next().value as string);
          dropped += 1;
        }
      }
      return fresh.map(({ event }) => event);
    },
    oldest(most) {
      const all = [...held.values()].map(({ incoming }) => incoming);
      return all.filter(({ event }) => event.cook === all[0].event.cook).slice(0, most);
    },
    release(incoming) {
      for (const { event } of incoming) remove(event.id);
    },
    get size() {
      return held.size;
    },
    get dropped() {
      return dropped;
    },
  };
}
