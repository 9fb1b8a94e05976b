import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { sampleBodies, sampleCook, sampleDevice, startMs } from '../../../test/sampleCook.ts';
import type { EventBodies, EventKind } from './bodies.ts';
import { canonicalJson } from './canonicalJson.ts';
import type { EventOf, LogEvent, Stamp } from './event.ts';
import { foldCook } from './fold.ts';

const runs = 500;
const { events, begun, water, heat, reading } = sampleCook();

/** As the server stamps them, when they come in one after the other. */
function stamped<E extends LogEvent>(arriving: readonly E[], secondsApart = 1): (E & Stamp)[] {
  return arriving.map((event, place) => ({
    ...event,
    seq: place + 1,
    tServer: new Date(startMs + place * secondsApart * 1000).toISOString(),
    prevHash: '',
    hash: '',
  }));
}

const shuffled = <T>(items: readonly T[]) => fc.shuffledSubarray([...items], { minLength: items.length });

/** Acts of a few devices with clocks of their own, wrong and right, over half an hour. */
const acts = fc
  .array(
    fc.record({
      device: fc.integer({ min: 0, max: 2 }),
      atMs: fc.integer({ min: 0, max: 1_800_000 }),
      kind: fc.constantFrom(...(Object.keys(sampleBodies) as (keyof typeof sampleBodies)[])),
    }),
    { minLength: 1, maxLength: 40 },
  )
  .map((list) => {
    const clocks = [{ aheadMs: 7_200_000 }, { aheadMs: -86_400_000, upForMs: 5e8 }, { measured: false }];
    const devices = clocks.map((clock) => sampleDevice(begun.cook, clock));
    const inTime = list.toSorted((a, b) => a.atMs - b.atMs);
    return inTime.map(({ device, atMs, kind }): EventOf<EventKind> => {
      const body: EventBodies[EventKind] = sampleBodies[kind];
      return devices[device].make<EventKind>(kind, body, atMs / 1000);
    });
  });

describe('the state of a cook', () => {
  const state = foldCook(events);

  it('has what happened, in its place', () => {
    expect(state).toMatchObject({ mode: 'live', startMs, stepIndex: 1, begun: { body: begun.body, timeS: 0 } });
    expect(state.readings).toHaveLength(41);
    expect(state.readings.map(({ timeS }) => timeS)).toEqual(
      state.readings.map(({ timeS }) => timeS).toSorted((a, b) => a - b),
    );
    expect(state.deeds.map(({ kind }) => kind)).toEqual(['water', 'alkali', 'stir', 'spoonTest', 'step', 'poured']);
    expect(state.measurements.map(({ kind }) => kind)).toEqual(['weight', 'dilutionPh', 'dilutionBrix']);
    expect(state.remarks.map(({ kind }) => kind)).toEqual(['note', 'photo']);
    expect(state.ended?.body).toEqual({ how: 'done' });
    expect(state.unknown).toEqual([]);
  });

  it('has a corrected deed as it is now, with what was said before', () => {
    const entry = state.deeds.find(({ id }) => id === water.id);
    expect(entry).toMatchObject({ body: { spoonfuls: 2 }, before: [water.body] });
  });

  it('has what never happened set apart, and nowhere else', () => {
    expect(state.struckOut).toMatchObject([{ id: heat.id, kind: 'heat', body: heat.body }]);
    expect(canonicalJson({ ...state, struckOut: [] })).not.toContain(heat.id);
  });

  it('has a correction that was taken back as if it were never made', () => {
    expect(state.readings.find(({ id }) => id === reading.id)).toMatchObject({ body: reading.body, before: [] });
  });

  it('is there before the beginning has come in, and for an empty log', () => {
    expect(foldCook([])).toMatchObject({
      begun: null,
      mode: null,
      startMs: null,
      arrival: { lastSeq: null, late: [] },
    });
    expect(foldCook(events.slice(1))).toMatchObject({ begun: null, mode: null, startMs: startMs + 1000 });
  });

  it('names the events that only a later Umberpan understands', () => {
    const later = { ...reading, id: 'later', kind: 'smell', body: { of: 'plums' } };
    const newer = { ...reading, id: 'newer', v: 9 };
    expect(foldCook([...events, later, newer])).toMatchObject({
      unknown: ['later', 'newer'],
      readings: state.readings,
    });
  });

  it('has everybody who saw an alarm, the earliest first', () => {
    const [a, b] = [sampleDevice(begun.cook), sampleDevice(begun.cook)];
    const first = a.make('seen', { alarm: 'foam' }, 4);
    const both = [b.make('seen', { alarm: 'foam' }, 5), first];
    expect(foldCook(both).seen).toMatchObject([{ id: first.id }, { body: { alarm: 'foam' } }]);
  });

  it('follows no correction of another kind of event, and none that leads back to itself', () => {
    const phone = sampleDevice(begun.cook);
    const stirred = phone.make('stir', {}, 1);
    const wrongKind = phone.make('correction', { corrects: stirred.id, kind: 'heat', body: { notch: 2 } }, 2);
    const circular = phone.make('correction', { corrects: stirred.id, kind: 'stir', body: null }, 3);
    const back = { ...circular, id: 'back', body: { corrects: 'back', kind: 'correction', body: null } } as const;
    expect(foldCook([stirred, wrongKind, back])).toMatchObject({ deeds: [{ body: {}, before: [] }], struckOut: [] });
  });
});

describe('the same events give the same state, bit for bit', () => {
  const whole = canonicalJson(foldCook(stamped(events)));

  it('in any order, with any of them repeated', () => {
    const mixed = shuffled(stamped(events)).chain((all) => fc.tuple(fc.constant(all), fc.shuffledSubarray(all)));
    fc.assert(
      fc.property(mixed, ([all, again]) => canonicalJson(foldCook([...again, ...all, ...again])) === whole),
      { numRuns: runs },
    );
  });

  it('for any acts of any devices, however their logs overlap when they are put together', () => {
    const parts = acts.chain((all) =>
      fc.tuple(fc.constant(all), fc.array(fc.shuffledSubarray(all), { maxLength: 4 }), shuffled(all)),
    );
    fc.assert(
      fc.property(parts, ([all, logs, rest]) => {
        expect(canonicalJson(foldCook([...logs.flat(), ...rest]))).toBe(canonicalJson(foldCook(all)));
      }),
      { numRuns: runs },
    );
  });

  it('when some were dropped on the way and sent again later: all but how they came in', () => {
    const content = (log: readonly LogEvent[]) => canonicalJson({ ...foldCook(log), arrival: null });
    const resent = shuffled(events).chain((all) => fc.tuple(fc.constant(all), fc.shuffledSubarray(all)));
    fc.assert(
      fc.property(resent, ([all, dropped]) => {
        const came = [...all.filter((event) => !dropped.includes(event)), ...dropped];
        return content(stamped(came, 7)) === content(events);
      }),
      { numRuns: runs },
    );
  });

  it('whichever devices the acts are spread over: all but who did them', () => {
    const spread = fc.tuple(acts, fc.array(fc.integer({ min: 0, max: 2 }), { minLength: 40, maxLength: 40 }));
    const anonymous = (log: readonly LogEvent[]) => foldCook(log).readings.map(({ timeS, body }) => ({ timeS, body }));
    fc.assert(
      fc.property(spread, ([all, owners]) => {
        const clocks = [{ aheadMs: 3_600_000 }, { aheadMs: -7_200_000, upForMs: 9e6 }, { upForMs: 0 }];
        const devices = clocks.map((clock) => sampleDevice(begun.cook, clock));
        const readings = all.map((_, place) => {
          const body = { ...sampleBodies.reading, valueC: 100 + place };
          return { atS: place * 3, body, owner: devices[owners[place]] };
        });
        const [one] = devices;
        const together = readings.map(({ atS, body, owner }) => owner.make('reading', body, atS));
        const alone = readings.map(({ atS, body }) => one.make('reading', body, atS));
        expect(anonymous(together)).toEqual(anonymous(alone));
      }),
      { numRuns: runs },
    );
  });
});

describe('late arrivals', () => {
  const readings = events.filter(({ kind, device }) => kind === 'reading' && device === begun.device);

  it('are marked when they come in after later ones', () => {
    const [first, second, third, ...rest] = readings;
    const arriving = stamped([first, third, ...rest, second]);
    expect(foldCook(arriving).arrival).toEqual({ lastSeq: arriving.length, late: [second.id] });
  });

  it('are not: devices that overtake each other by seconds, and what came in together', () => {
    const [first, second, third, ...rest] = readings;
    expect(foldCook(stamped([third, second, first, ...rest])).arrival.late).toEqual([]);
    const together = stamped(readings.toReversed(), 0);
    expect(foldCook(together).arrival.late).toEqual([]);
  });
});
