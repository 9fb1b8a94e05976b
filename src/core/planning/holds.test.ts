import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { heldBy, holdRange, holdsOf, ownHolds } from './holds.ts';
import { requestRefusals } from './refusals.ts';
import { defaultRequest, type PlanRequest, requireRequest } from './request.ts';

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
