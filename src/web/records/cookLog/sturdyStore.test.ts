import { describe, expect, it } from 'vitest';
import { begunBody, sampleBodies, sampleDevice } from '../../../../test/sampleCook.ts';
import type { CookStore, EventDraft } from './cookStore.ts';
import { memoryStore } from './memoryStore.ts';
import { sturdyStore } from './sturdyStore.ts';

const cook = '0b0e2f4a-6f0f-4a8e-9a53-0d1f6f7b7c03';
const maker = sampleDevice(cook);
const draft = (): EventDraft => maker.make('reading', sampleBodies.reading, 1);

/** A store that can be told to have no room. */
function tight(): CookStore & { full: boolean } {
  const store = memoryStore();
  const unlessFull =
    <Given extends unknown[], T>(work: (...given: Given) => Promise<T>) =>
    async (...given: Given) => {
      if (limited.full) throw new DOMException('no room', 'QuotaExceededError');
      return work(...given);
    };
  const limited = {
    ...store,
    full: false,
    append: unlessFull(store.append),
    put: unlessFull(store.put),
    take: unlessFull(store.take),
    noteCook: unlessFull(store.noteCook),
  };
  return limited;
}

describe('a store without room', () => {
  it('holds what comes in memory, says so, and writes it when there is room again', async () => {
    const durable = tight();
    const store = sturdyStore(durable);
    const [first] = await store.append([draft()]);
    expect(store.storage()).toBe('ok');
    durable.full = true;
    const [second] = await store.append([draft()]);
    expect(store.storage()).toBe('full');
    expect((await store.read(cook)).held).toEqual(expect.arrayContaining([first, second]));
    durable.full = false;
    const [third] = await store.append([draft()]);
    expect(store.storage()).toBe('ok');
    expect((await durable.read(cook)).held).toEqual(expect.arrayContaining([first, second, third]));
  });

  it('gives no count of the device twice', async () => {
    const durable = tight();
    const store = sturdyStore(durable);
    const made = [];
    for (const full of [false, true, true, false, true, false]) {
      durable.full = full;
      made.push(...(await store.append([draft(), draft()])));
    }
    const names = made.map(({ event }) => `${event.device} ${event.deviceSeq}`);
    expect(new Set(names).size).toBe(12);
  });

  it('can begin a cook, which is listed', async () => {
    const durable = tight();
    durable.full = true;
    const store = sturdyStore(durable);
    await store.append([maker.make('begun', begunBody, 0)]);
    expect(await store.cooks()).toMatchObject([{ id: cook, mode: 'live', ended: null }]);
    durable.full = false;
    await store.append([draft()]);
    expect(await durable.cooks()).toHaveLength(1);
  });
});
