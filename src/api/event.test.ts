import { describe, expect, expectTypeOf, it } from 'vitest';
import { begunBody, sampleBodies, sampleCook, sampleDevice } from '../../test/sampleCook.ts';
import type { EventBodies, EventKind } from '../core/log/bodies.ts';
import type { KnownEvent } from '../core/log/event.ts';
import { eventRanges } from '../core/log/ranges.ts';
import { eventKinds } from '../core/log/upgrade.ts';
import { eventBatchSchema, eventJsonSchema, eventSchema, mostTogether } from './event.ts';
import { eventBodySchemas } from './eventBodies.ts';
import { fieldErrors } from './fieldError.ts';
import type { z } from './zod.ts';

const { cook, events, reading } = sampleCook();
const device = sampleDevice(cook);
const passes = (event: unknown) => eventSchema.safeParse(event).success;
const complaints = (event: unknown) => {
  const { error } = eventSchema.safeParse(event);
  return error ? fieldErrors(error).map(({ field }) => field) : [];
};

it('schemas and core types are the same, both ways (checked by the compiler)', () => {
  type Bodies = { [K in EventKind]: z.infer<(typeof eventBodySchemas)[K]> };
  expectTypeOf<Bodies>().toExtend<EventBodies>();
  expectTypeOf<Omit<EventBodies, 'begun'>>().toExtend<Omit<Bodies, 'begun'>>();
  expectTypeOf<z.infer<typeof eventSchema>>().toExtend<KnownEvent>();
  expect(Object.keys(eventBodySchemas).toSorted()).toEqual(eventKinds.toSorted());
});

it('takes an event of every kind, as it is', () => {
  expect(new Set(events.map(({ kind }) => kind))).toEqual(new Set(eventKinds));
  for (const event of events) expect(eventSchema.parse(event)).toEqual(event);
});

describe('a number', () => {
  it.each([
    ['reading', 'valueC', eventRanges.valueC],
    ['heat', 'notch', eventRanges.notch],
    ['water', 'waterKg', eventRanges.waterKg],
    ['water', 'spoonfuls', eventRanges.spoonfuls],
    ['alkali', 'alkaliKg', eventRanges.alkaliKg],
    ['spoonTest', 'a430', eventRanges.a430],
    ['weight', 'grossKg', eventRanges.grossKg],
    ['weight', 'tareKg', eventRanges.tareKg],
    ['dilutionPh', 'ph', eventRanges.ph],
    ['dilutionBrix', 'brix', eventRanges.brix],
    ['dilutionBrix', 'temperatureC', eventRanges.dilutionC],
    ['putAside', 'forS', eventRanges.putAsideS],
  ] as const)('of %s.%s is taken up to its limits and no further', (kind, field, [least, most]) => {
    const withValue = (value: unknown) =>
      passes(device.make<EventKind>(kind, { ...sampleBodies[kind], [field]: value } as EventBodies[EventKind], 1));
    const step = (most - least) * 1e-6;
    expect([least, most].map(withValue)).toEqual([true, true]);
    const refused = [least - step, most + step, Number.NaN, Number.POSITIVE_INFINITY, String(least), undefined];
    expect(refused.map(withValue)).toEqual(refused.map(() => false));
  });
});

describe('a reading', () => {
  const withBody = (body: Partial<EventBodies['reading']>) => ({
    ...reading,
    body: { ...sampleBodies.reading, ...body },
  });

  it.each(['lost', 'doubtful'] as const)('without a value is %s', (quality) => {
    expect(passes(withBody({ valueC: null, quality }))).toBe(true);
  });
  it.each(['fresh', 'late', 'byHand', 'guessed'] as const)('without a value is not %s', (quality) => {
    expect(complaints(withBody({ valueC: null, quality }))).toEqual(['body.quality']);
  });
  it('with a value is not lost', () => {
    expect(complaints(withBody({ quality: 'lost' }))).toEqual(['body.quality']);
  });
  it('says its unit, and keeps what was sent', () => {
    expect(passes(withBody({ unit: '[degF]', raw: 250.5 }))).toBe(true);
    expect(passes(withBody({ valueC: null, quality: 'lost', raw: '--' }))).toBe(true);
    expect(complaints(withBody({ unit: 'F' as never }))).toEqual(['body.unit']);
  });
});

it.each([
  ['id', { id: '5f0c2c3e-0000-4000-8000-000000000000' }],
  ['deviceSeq', { deviceSeq: 0 }],
  ['deviceSeq', { deviceSeq: 1.5 }],
  ['tDevice', { tDevice: '2031-02-30T10:00:00.000Z' }],
  ['tDevice', { tDevice: '2031-02-03T10:00:00Z' }],
  ['tMono', { tMono: -1 }],
  ['tz', { tz: 'the kitchen' }],
  ['v', { v: 2 }],
  ['kind', { kind: 'smell' }],
  ['mood', { mood: 'calm' }],
  ['body.mood', { body: { ...sampleBodies.reading, mood: 'calm' } }],
  ['body', { body: null }],
])('a wrong envelope is refused by field: %s', (field, change) => {
  expect(complaints({ ...reading, ...change })).toEqual([field]);
});

it.each([
  ['what is not known', { corrects: reading.id, kind: 'smell', body: null }],
  ['the beginning', { corrects: reading.id, kind: 'begun', body: begunBody }],
  ['a correction by another body', { corrects: reading.id, kind: 'correction', body: { corrects: reading.id } }],
  ['a heat setting by water', { corrects: reading.id, kind: 'heat', body: sampleBodies.water }],
])('a correction of %s is refused', (_, body) => {
  expect(passes({ ...reading, kind: 'correction', body })).toBe(false);
});

it('a rehearsal says what its pan was drawn from; a live cook does not', () => {
  const begun = (change: Partial<EventBodies['begun']>) => passes(device.make('begun', { ...begunBody, ...change }, 0));
  expect(begun({ mode: 'rehearsal', rehearsal: { seed: 7, speed: 10 } })).toBe(true);
  expect(begun({ mode: 'rehearsal', rehearsal: { seed: 7, speed: 10, surprises: true } })).toBe(true);
  expect(begun({ mode: 'rehearsal', rehearsal: { seed: 7, speed: 10, surprises: 'yes' as never } })).toBe(false);
  expect(begun({ mode: 'rehearsal' })).toBe(false);
  expect(begun({ rehearsal: { seed: 7, speed: 10 } })).toBe(false);
});

it('takes batches from one event to the most', () => {
  const sizes = [0, 1, mostTogether, mostTogether + 1];
  const taken = sizes.map((size) => eventBatchSchema.safeParse(Array(size).fill(reading)).success);
  expect(taken).toEqual([false, true, true, false]);
});

it('describes itself as JSON Schema 2020-12, where every reference leads somewhere', () => {
  const schema = eventJsonSchema();
  expect(schema).toMatchObject({
    $schema: 'https://json-schema.org/draft/2020-12/schema',
    $id: 'urn:umberpan:event:1',
  });
  const references = [...JSON.stringify(schema).matchAll(/"\$ref":"#\/\$defs\/(\w+)"/g)].map(([, name]) => name);
  expect(references.length).toBeGreaterThan(2);
  expect(Object.keys(schema.$defs ?? {})).toEqual(expect.arrayContaining(references));
});
