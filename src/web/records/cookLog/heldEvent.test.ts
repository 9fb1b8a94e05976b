import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { sampleBodies, sampleDevice } from '../../../../test/sampleCook.ts';
import { fromServer, mine, notWrittenYet, receipted, refusedWith } from './heldEvent.ts';
import { knownEvents } from './knownEvents.ts';

const device = sampleDevice('0b0e2f4a-6f0f-4a8e-9a53-0d1f6f7b7c01');
const events = Array.from({ length: 6 }, (_, second) => device.make('reading', sampleBodies.reading, second));

/** All that can be told of an event on its way to the server's disk. */
const tellings = events.flatMap((event, place) => {
  const stamp = { seq: place + 1, tServer: '2031-05-09T18:30:00.000Z', prevHash: `${place}`, hash: `${place + 1}` };
  const made = mine(event);
  return [
    made,
    notWrittenYet(event),
    refusedWith(made, 'no'),
    receipted(made, { id: event.id, ...stamp }),
    fromServer({ ...event, ...stamp }),
  ];
});

describe('what is known of events', () => {
  it('is the same in whatever order it was told, and however often', () => {
    const inOrder = knownEvents(tellings);
    fc.assert(
      fc.property(fc.shuffledSubarray([...tellings, ...tellings], { minLength: 2 * tellings.length }), (told) => {
        const known = knownEvents([]);
        for (const one of told) known.take([one]);
        const byId = (a: { readonly id: string }, b: { readonly id: string }) => (a.id < b.id ? -1 : 1);
        expect(known.shown().toSorted(byId)).toEqual(inOrder.shown().toSorted(byId));
        expect(known.waiting()).toEqual([]);
        expect(known.all().every((held) => held.mine && held.sending === 'done')).toBe(true);
      }),
    );
  });

  it('is nothing new the second time, and what did not change stays the same object', () => {
    const known = knownEvents(events.map(mine));
    const before = known.shown();
    expect(known.take(events.map(mine))).toEqual([]);
    expect(known.shown()).toBe(before);
    known.take([tellings[4]]);
    expect(known.shown()[0]).toMatchObject({ seq: 1 });
    expect(known.shown()[1]).toBe(before[1]);
  });

  it('waits to be sent as the device counted, if the device made it', () => {
    const known = knownEvents([...events.slice(1).toReversed().map(mine), notWrittenYet(events[0])]);
    expect(known.waiting().map(({ event }) => event)).toEqual(events.slice(1));
  });
});
