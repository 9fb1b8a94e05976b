import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { begunBody, sampleBodies, sampleDevice } from '../../../../test/sampleCook.ts';
import { mostTogether } from '../../../api/event.ts';
import type { LogEvent } from '../../../core/log/event.ts';
import { ProblemError } from '../answer.ts';
import { outbox, sentTogether } from './outbox.ts';

const cook = '0b0e2f4a-6f0f-4a8e-9a53-0d1f6f7b7c02';

const problem = (status: number) =>
  new ProblemError({ type: '', title: '', status, detail: `refused with ${status}`, instance: '' });

/** A cook's own events, and a server that takes them, refuses some for ever, and fails as the script says. */
function mail(count: number, isBad: (place: number) => boolean, failures: (() => Error | undefined)[] = []) {
  const device = sampleDevice(cook);
  const begun = device.make('begun', begunBody, 0);
  const events: LogEvent[] = [begun];
  for (let second = 1; second <= count; second++) events.push(device.make('reading', sampleBodies.reading, second));
  const bad = new Set(events.filter((_, place) => isBad(place)).map(({ id }) => id));
  const arrived: LogEvent[] = [];
  const refused: string[] = [];
  const sizes: number[] = [];
  const settled = new Set<string>();
  let unknown = 0;
  const failed: unknown[] = [];
  const receive = (sent: readonly LogEvent[]) => {
    sizes.push(sent.length);
    const failure = failures.shift()?.();
    if (failure?.name === 'TypeError') throw failure;
    if (sent.some(({ id }) => bad.has(id))) throw problem(400);
    arrived.push(...sent.filter((event) => !arrived.includes(event)));
    // The answer is lost, though the events are there.
    if (failure) throw failure;
    return sent.map(({ id }) => ({ id, seq: 1, tServer: '', hash: '' }));
  };
  const send = outbox({
    waiting: () => events.filter(({ id }) => !settled.has(id)),
    begin: async (event) => receive([event])[0],
    send: async (sent) => receive(sent),
    acknowledged: async (receipts) => {
      for (const { id } of receipts) settled.add(id);
    },
    refused: async ({ id }, words) => {
      settled.add(id);
      refused.push(`${events.findIndex((event) => event.id === id)}: ${words}`);
    },
    cookUnknown: async () => {
      unknown += 1;
    },
    failed: (error) => failed.push(error),
  });
  return {
    events,
    arrived,
    refused,
    sizes,
    send,
    bad,
    waits: () => events.length - settled.size,
    unknown: () => unknown,
    failed,
  };
}

describe('own events on their way to the server', () => {
  it('go as many together as the server takes, the beginning alone', async () => {
    expect(sentTogether).toBe(mostTogether);
    const box = mail(1200, () => false);
    await box.send();
    expect(box.sizes).toEqual([1, 500, 500, 200]);
    expect(box.arrived).toEqual(box.events);
  });

  it('do not wait for one that is refused, which is told with the words of the server', async () => {
    const box = mail(100, (place) => place === 40);
    await box.send();
    expect(box.refused).toEqual(['40: refused with 400']);
    expect(box.arrived).toEqual(box.events.filter((_, place) => place !== 40));
    expect(box.sizes.length).toBeLessThan(20);
  });

  it.each([401, 403, 404, 429, 500, 503])('wait and are not refused when the server answers %d', async (status) => {
    const box = mail(3, () => false, [() => problem(status)]);
    box.arrived.length = 0;
    await box.send();
    expect([box.refused, box.waits()]).toEqual([[], 4]);
    expect(box.unknown()).toBe(status === 404 ? 1 : 0);
    expect(box.failed).toMatchObject([{ problem: { status } }]);
    await box.send();
    expect(box.waits()).toBe(0);
  });

  it('arrive once and in order, over lost questions and lost answers, but for those refused', async () => {
    const fates = fc.array(fc.constantFrom('none', 'noQuestion', 'noAnswer'), { maxLength: 30 });
    const property = fc.asyncProperty(
      fc.nat(40),
      fc.uniqueArray(fc.integer({ min: 1, max: 40 })),
      fates,
      async (count, bad, script) => {
        const failures = script.map((fate) => () => {
          if (fate === 'noQuestion') return new TypeError('no server');
          return fate === 'noAnswer' ? new DOMException('too late', 'TimeoutError') : undefined;
        });
        const box = mail(count, (place) => bad.includes(place), failures);
        for (let tries = 0; tries <= script.length; tries++) await box.send();
        expect(box.waits()).toBe(0);
        expect(box.arrived).toEqual(box.events.filter(({ id }) => !box.bad.has(id)));
        expect(box.refused.length).toBe(box.bad.size);
      },
    );
    await fc.assert(property);
  });

  it('that were asked for while others are under way are sent after them', async () => {
    const box = mail(2, () => false, [() => new TypeError('no server')]);
    await Promise.all([box.send(), box.send()]);
    expect(box.waits()).toBe(0);
  });
});
