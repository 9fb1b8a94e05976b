import { describe, expect, test } from 'vitest';
import { createHiddenPan } from '../pan/hiddenPan.ts';
import { defaultKit } from '../pan/kit.ts';
import { prepareKit } from '../pan/preparedKit.ts';
import { dissolvedKg, place } from '../pan/state.ts';
import { normalNumbers } from '../reactions/normal.ts';
import { a430Of, type Observation } from './observe.ts';
import { type Range, rangeOf } from './range.ts';
import { createTwin, type Twin, type TwinEvent } from './twin.ts';

const prepared = prepareKit(defaultKit);
const charge = { sucroseKg: 0.4, waterKg: 0.13, maltExtractKg: 0.0032, citricAcidKg: 0 };
const members = 64;

/** Heats a hidden pan for some minutes, reading each 10 s: what a twin would be told. */
function heated(seed: number, minutes: number) {
  const truth = createHiddenPan(prepared, charge, normalNumbers(seed));
  const events: TwinEvent[] = [];
  const deed = (timeS: number, notch: number) => {
    const heat = { kind: 'heat', notch } as const;
    truth.perform(heat);
    events.push({ timeS, deed: heat });
  };
  deed(0, 6);
  for (let t = 10; t <= minutes * 60; t += 10) {
    truth.moveTo(t);
    if (t === 600) deed(t, 3);
    events.push({ timeS: t, observation: { kind: 'reading', valueC: truth.reading(), byHand: false } });
  }
  return { truth, events };
}

const waterOf = (twin: Twin): Range =>
  rangeOf(twin.members.map(({ y }) => (100 * y[place.waterKg]) / (y[place.waterKg] + dissolvedKg(y))));
const width = ({ low, high }: Range) => high - low;

describe('after a quarter of an hour of readings the twin', () => {
  const { truth, events } = heated(5, 16);
  const twin = createTwin(prepared, charge, { members, seed: 3 });
  for (const event of events) twin.take(event);
  const blind = createTwin(prepared, charge, { members, seed: 3 });
  for (const event of events) if ('deed' in event) blind.take(event);
  blind.moveTo(twin.timeS);

  test('knows the temperature within a degree, and the water better than without readings', () => {
    const temperature = rangeOf(twin.members.map(({ temperatureC }) => temperatureC));
    expect(Math.abs(temperature.mid - truth.temperatureC)).toBeLessThan(1.2);
    expect(width(waterOf(twin))).toBeLessThan(0.6 * width(waterOf(blind)));
    const water = (100 * truth.y[place.waterKg]) / (truth.y[place.waterKg] + dissolvedKg(truth.y));
    expect(Math.abs(waterOf(twin).mid - water)).toBeLessThan(2 * width(waterOf(twin)) + 1);
  });

  test('has left the parameters of pigment alone: a thermometer says nothing of them', () => {
    const strengths = (t: Twin) => t.members.map(({ values }) => values.absorptivity420);
    expect(strengths(twin)).toEqual(strengths(blind));
    const efficiencies = (t: Twin) => rangeOf(t.members.map(({ values }) => values.stoveEfficiency));
    expect(width(efficiencies(twin))).toBeLessThan(0.7 * width(efficiencies(blind)));
  });
});

describe('a late event', () => {
  const { events } = heated(7, 6);

  test('leads to the same estimate as if it had come in time', () => {
    const inTime = createTwin(prepared, charge, { members, seed: 2 });
    for (const event of events) inTime.take(event);
    const late = createTwin(prepared, charge, { members, seed: 2 });
    const missing = events[20];
    for (const event of events) if (event !== missing) late.take(event);
    late.take(missing);
    const mids = (twin: Twin) => rangeOf(twin.members.map(({ temperatureC }) => temperatureC));
    expect(mids(late).mid).toBeCloseTo(mids(inTime).mid, 3);
    expect(waterOf(late).mid).toBeCloseTo(waterOf(inTime).mid, 3);
  });
});

test('a fallen probe is held back for ever, and believed at once when the cook vouches for it', () => {
  const { events } = heated(9, 12);
  const twin = createTwin(prepared, charge, { members, seed: 4 });
  for (const event of events) twin.take(event);
  const fallen = (after: number, confirmed: boolean): TwinEvent => ({
    timeS: 720 + after,
    observation: { kind: 'reading', valueC: 24, byHand: false, confirmed },
  });
  for (let after = 10; after <= 600; after += 10) {
    const taken = twin.take(fallen(after, false));
    expect(taken?.used).toBe(false);
    expect(taken?.surprise).toBeLessThan(-4);
  }
  // Ring and pan went on; the twin knows that it is still hot.
  expect(rangeOf(twin.members.map(({ temperatureC }) => temperatureC)).mid).toBeGreaterThan(100);
  expect(twin.take(fallen(610, true))?.used).toBe(true);
});

test('the same seed and events give the same twin', () => {
  const { events } = heated(11, 3);
  const run = () => {
    const twin = createTwin(prepared, charge, { members: 16, seed: 9 });
    for (const event of events) twin.take(event);
    return twin.members.map(({ y }) => Array.from(y));
  };
  expect(run()).toEqual(run());
});

describe('beside the thermometer', () => {
  const { events } = heated(13, 16);

  /** Spread of water, colour and pH of a twin that has seen no reading, before and after an observation of its own middle. */
  function told(kind: 'weight' | 'dilutionColour' | 'dilutionPh') {
    const twin = createTwin(prepared, charge, { members: 128, seed: 5 });
    for (const event of events) if ('deed' in event) twin.take(event);
    twin.moveTo(960);
    const look = () => ({
      water: width(waterOf(twin)),
      colour: width(rangeOf(twin.members.map((m) => Math.log(a430Of(m) + 1e-3)))),
      ph: width(rangeOf(twin.members.map(({ ph }) => ph))),
    });
    const middle = (of: (m: Twin['members'][number]) => number) => rangeOf(twin.members.map(of)).mid;
    const before = look();
    const observation = {
      weight: { kind: 'weight', contentsKg: middle(({ y }) => dissolvedKg(y) + y[place.waterKg]) },
      dilutionColour: { kind: 'dilutionColour', a430: middle(a430Of) },
      dilutionPh: { kind: 'dilutionPh', ph: middle((m) => m.ph) },
    }[kind] as Observation;
    twin.take({ timeS: 960, observation });
    return { before, after: look() };
  }

  test('a weighed pan narrows the water', () => {
    const { before, after } = told('weight');
    expect(after.water).toBeLessThan(0.8 * before.water);
  });

  test('the pH of a dilution narrows the pH', () => {
    const { before, after } = told('dilutionPh');
    expect(after.ph).toBeLessThan(before.ph);
  });

  test('a colour leaves the water as it is', () => {
    const { before, after } = told('dilutionColour');
    // To the rounding of taking states apart and together again.
    expect(after.water).toBeCloseTo(before.water, 3);
  });
});
