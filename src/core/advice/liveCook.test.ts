// A cook followed by its log: whatever order, portions and corrections it comes in, it ends as if told at once.
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { begunBody, sampleDevice } from '../../../test/sampleCook.ts';
import type { LogEvent } from '../log/event.ts';
import { readingAsReceived } from '../log/readingAsReceived.ts';
import { prepareKit } from '../pan/preparedKit.ts';
import { createLiveCook } from './liveCook.ts';

const prepared = prepareKit(begunBody.kit);
const { charge } = begunBody.amounts;
const { steps } = begunBody;

const liveCook = (members = 8) => createLiveCook({ prepared, charge, steps, members, seed: 3 });

const cook = 'cook-1';
const phone = sampleDevice(cook);
const probe = sampleDevice(cook);
const begun = phone.make('begun', begunBody, 0);
const read = (timeS: number, shown: number) => probe.make('reading', readingAsReceived('pan', shown, 'Cel'), timeS);
const heat = phone.make('heat', { notch: 4 }, 2);
const wrongDial = phone.make('heat', { notch: 9 }, 61);
const dialRight = phone.make('correction', { corrects: wrongDial.id, kind: 'heat', body: { notch: 5 } }, 70);
const water = phone.make('water', { waterKg: 0.0049, spoonfuls: 1, spoon: null }, 150);

const events: readonly LogEvent[] = [
  begun,
  heat,
  ...Array.from({ length: 12 }, (_, i) => read(10 + 20 * i, 21 + i)),
  wrongDial,
  dialRight,
  water,
  phone.make('correction', { corrects: water.id, kind: 'water', body: null }, 155),
  phone.make('step', { index: 1 }, 200),
  phone.make('spoonTest', { a430: 0.4, behaviour: 'bends', taste: [] }, 210),
];

function ending(live: ReturnType<typeof liveCook>) {
  const { followed } = live;
  return {
    members: followed.twin.members.map(({ temperatureC, y }) => [temperatureC, ...y]),
    notch: followed.twin.notch,
    progress: followed.progress,
    beliefs: followed.beliefs.map(({ timeS, believedC }) => [timeS, believedC.mid]),
    taken: followed.taken,
  };
}

/** Everything but the numbers, and the numbers in a row. */
function split(value: unknown): { readonly form: string; readonly numbers: readonly number[] } {
  const numbers: number[] = [];
  const form = JSON.stringify(value, (_, each) => (typeof each === 'number' ? numbers.push(each) * 0 : each));
  return { form, numbers };
}

const atOnce = liveCook();
atOnce.hear(events);
const expected = ending(atOnce);

test('the twin goes by what the log now says: the dial as put right, and no water', () => {
  expect(expected.notch).toBe(5);
  expect(expected.progress.stepIndex).toBe(1);
  // Strange are a dark drop on a cold syrup, and perhaps a reading or two.
  expect(expected.taken.filter((taken) => taken?.used).length).toBeGreaterThan(8);
});

test('whatever order and portions it comes in, and however often', () => {
  const arrivals = fc.shuffledSubarray([...events], { minLength: events.length }).chain((shuffled) =>
    fc.record({
      shuffled: fc.constant([...shuffled, ...shuffled.slice(0, 3)]),
      cuts: fc.array(fc.integer({ min: 1, max: events.length }), { maxLength: 5 }),
    }),
  );
  fc.assert(
    fc.property(arrivals, ({ shuffled, cuts }) => {
      const live = liveCook();
      for (const cut of [...cuts.toSorted((a, b) => a - b), shuffled.length]) live.hear(shuffled.slice(0, cut));
      const [ended, wanted] = [split(ending(live)), split(expected)];
      expect(ended.form).toBe(wanted.form);
      // Done again from a checkpoint it rounds otherwise, in the last places.
      const apart = ended.numbers.map((each, i) => {
        const other = wanted.numbers[i] ?? Number.NaN;
        return each === other ? 0 : Math.abs(each - other) / (1 + Math.abs(each));
      });
      expect(Math.max(...apart)).toBeLessThan(1e-6);
    }),
    { numRuns: 25 },
  );
}, 60_000);

describe('a thermometer that turns out to show Fahrenheit', () => {
  const phone = sampleDevice(cook);
  const begun = phone.make('begun', begunBody, 0);
  const heat = phone.make('heat', { notch: 4 }, 1);
  const shown = [69, 70, 71].map((value, i) => read(10 + 10 * i, value));
  test('is believed from the reading on that the cook names, and was not before', () => {
    const live = liveCook(32);
    live.hear([begun, heat, ...shown]);
    const before = live.followed.taken.slice(1).map((taken) => taken?.used);
    const said = phone.make('probeUnit', { probe: 'pan', unit: '[degF]', from: shown[0]?.id ?? null }, 35);
    live.hear([begun, heat, ...shown, said]);
    expect(before).toEqual([false, false, false]);
    expect(live.followed.taken.slice(1).map((taken) => taken?.used)).toEqual([true, true, true]);
    expect(live.state.readings.map(({ body }) => Math.round(body.valueC ?? 0))).toEqual([21, 21, 22]);
  });
});

test('a strange reading that the cook vouches for is believed', () => {
  const phone = sampleDevice(cook);
  const begun = phone.make('begun', begunBody, 0);
  const live = liveCook(32);
  const strange = read(60, 70);
  live.hear([begun, strange]);
  expect(live.followed.taken[0]?.used).toBe(false);
  live.hear([begun, strange, phone.make('vouched', { probe: 'pan' }, 80)]);
  expect(live.followed.taken[0]?.used).toBe(true);
});

test('without readings the twin goes on, a little behind, and the alarm says that they are missing', () => {
  const phone = sampleDevice(cook);
  const begun = phone.make('begun', begunBody, 0);
  const heat = phone.make('heat', { notch: 3 }, 1);
  const live = liveCook();
  live.hear([begun, heat, read(10, 22), read(20, 23)]);
  for (let timeS = 21; timeS <= 90; timeS++) live.moveTo(timeS);
  expect(live.followed.twin.timeS).toBeGreaterThanOrEqual(75);
  expect(live.alarms.states.probeLost).toMatchObject({ on: true, phase: 'new' });
  live.hear([begun, heat, read(10, 22), read(20, 23), phone.make('seen', { alarm: 'probeLost' }, 91)]);
  live.moveTo(92);
  expect(live.alarms.states.probeLost.phase).toBe('seen');
});

test('asks for a reading by hand two minutes after the last, and again two minutes after that one', () => {
  const phone = sampleDevice(cook);
  const log: LogEvent[] = [phone.make('begun', begunBody, 0), phone.make('heat', { notch: 3 }, 1)];
  const live = liveCook();
  const readAt = (timeS: number) =>
    log.push(read(timeS, Math.round(live.followed.twin.members[0]?.temperatureC ?? 20)));
  const asksAt = (timeS: number) => {
    live.hear(log);
    live.moveTo(timeS);
    return live.advice().kind === 'read';
  };
  for (let timeS = 10; timeS <= 60; timeS += 10) {
    readAt(timeS);
    expect(asksAt(timeS)).toBe(false);
  }
  expect(asksAt(170)).toBe(false);
  expect(asksAt(180)).toBe(true);
  readAt(190);
  expect(asksAt(191)).toBe(false);
  expect(asksAt(320)).toBe(true);
});

test('after the pour nothing more is told to the twin, until the pour is taken back', () => {
  const phone = sampleDevice(cook);
  const begun = phone.make('begun', begunBody, 0);
  const live = liveCook();
  const heat = phone.make('heat', { notch: 3 }, 1);
  const poured = phone.make('poured', {}, 40);
  live.hear([begun, heat, poured, read(60, 25)]);
  live.moveTo(100);
  expect([live.followed.progress.poured, live.followed.twin.timeS]).toEqual([true, 40]);
  live.hear([
    begun,
    heat,
    poured,
    read(60, 25),
    phone.make('correction', { corrects: poured.id, kind: 'poured', body: null }, 101),
  ]);
  expect([live.followed.progress.poured, live.followed.twin.timeS]).toEqual([false, 60]);
});
