import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  allHolds,
  heldAt,
  heldBy,
  holdRange,
  holdsOf,
  ownHolds,
  withFurtherHold,
  withoutFurtherHold,
} from './holds.ts';
import { requestRefusals } from './refusals.ts';
import { defaultRequest, mostFurtherHolds, type PlanRequest, requireRequest } from './request.ts';

const route = fc.constantFrom('pale', 'bright', 'deep' as const);

describe('a hold set by hand', () => {
  test('however it is pulled about, breaks no limit of safety and no range', () => {
    const pull = fc.record({
      at: fc.nat(2),
      kelvin: fc.double({ min: -80, max: 80, noNaN: true }),
      minutes: fc.double({ min: -300, max: 300, noNaN: true }),
    });
    fc.assert(
      fc.property(route, fc.array(pull, { maxLength: 8 }), (on, pulls) => {
        let request: PlanRequest = { ...defaultRequest, route: on as PlanRequest['route'] };
        for (const { at, kelvin, minutes } of pulls) {
          const holds = holdsOf(request);
          const hold = holds[at % holds.length] ?? 'invert';
          request = { ...request, ...heldBy(hold, request, kelvin, minutes) };
        }
        requireRequest(request);
        expect(requestRefusals(request)).toEqual([]);
      }),
      { numRuns: 300 },
    );
  });

  test('and so do further holds that are added, pulled about and taken away again', () => {
    const act = fc.record({
      does: fc.constantFrom('add', 'take away', 'pull', 'pull', 'pull'),
      at: fc.nat(6),
      kelvin: fc.double({ min: -60, max: 60, noNaN: true }),
      minutes: fc.double({ min: -100, max: 100, noNaN: true }),
    });
    fc.assert(
      fc.property(route, fc.array(act, { maxLength: 12 }), (on, acts) => {
        let request: PlanRequest = { ...defaultRequest, route: on as PlanRequest['route'] };
        for (const { does, at, kelvin, minutes } of acts) {
          const holds = allHolds(request);
          const further = request.moreHolds?.length ?? 0;
          if (does === 'add') {
            const added = withFurtherHold(request);
            expect(added === undefined).toBe(further === mostFurtherHolds);
            request = { ...request, ...added };
          } else if (does === 'take away' && further > 0) {
            request = { ...request, ...withoutFurtherHold(at % further, request) };
          } else if (does === 'pull') {
            request = { ...request, ...heldBy(holds[at % holds.length], request, kelvin, minutes) };
          }
        }
        requireRequest(request);
        expect(requestRefusals(request)).toEqual([]);
        const heats = allHolds(request).map((place) => heldAt(place, request).celsius);
        const order = heats.slice(holdsOf(request).length - 1);
        expect(order).toEqual(order.toSorted((a, b) => a - b));
        const without = { ...request, ...ownHolds(request) };
        expect(without).toEqual({ ...defaultRequest, ...{ route: request.route } });
      }),
      { numRuns: 300 },
    );
  });

  test('a further hold begins a little hotter than the one before it, and stays between its neighbours', () => {
    const one = {
      ...defaultRequest,
      route: 'bright',
      ...withFurtherHold({ ...defaultRequest, route: 'bright' }),
    } as const;
    expect(one.moreHolds).toEqual([{ celsius: 145, minutes: 5 }]);
    const two = { ...one, ...withFurtherHold(one) };
    expect(allHolds(two)).toEqual(['invert', 'brown', 0, 1]);
    expect(holdRange('brown', two)).toEqual({ low: 120, high: 145, limit: 'LIM-ORDER' });
    expect(holdRange(0, two)).toEqual({ low: 140, high: 150, limit: 'LIM-ORDER' });
    expect(holdRange(1, two)).toEqual({ low: 145, high: 159, limit: 'LIM-ROAST' });
    expect(withoutFurtherHold(0, two)).toEqual({ moreHolds: [{ celsius: 150, minutes: 5 }] });
    expect(withoutFurtherHold(0, one)).toEqual({ moreHolds: undefined });
    expect(() => heldAt(3, two)).toThrow('further hold is 3; allowed is 0 to 1');
  });

  test('one degree past its range is refused by the limit that it names', () => {
    const named = (['invert', 'roast'] as const).map((hold) => {
      const { high, limit } = holdRange(hold, defaultRequest);
      const [refused] = requestRefusals({ ...defaultRequest, [`${hold}C`]: high + 1 });
      expect(refused?.limit).toBe(limit);
      return limit;
    });
    expect(named).toEqual(['LIM-ALKALI-HEAT', 'LIM-ROAST']);
  });

  test('finds its way back to the route’s own', () => {
    const pulled = { ...defaultRequest, ...heldBy('brown', defaultRequest, 4, -10) };
    expect(pulled).toMatchObject({ brownC: 144, brownMinutes: 15 });
    expect({ ...pulled, ...ownHolds(pulled) }).toEqual(defaultRequest);
    expect(ownHolds(defaultRequest)).toEqual({});
  });
});
