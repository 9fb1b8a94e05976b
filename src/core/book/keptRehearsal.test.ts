import { randomBytes, randomUUID } from 'node:crypto';
import { describe, expect, it, vi } from 'vitest';
import { cookedLog } from '../../../test/cookedLog.ts';
import { begunBody, sampleCook, sampleDevice, startMs } from '../../../test/sampleCook.ts';
import { eventSchema } from '../../api/event.ts';
import type { KnownEvent, LogEvent } from '../log/event.ts';
import { foldCook } from '../log/fold.ts';
import { readingAsReceived } from '../log/readingAsReceived.ts';
import { defaultKit } from '../pan/kit.ts';
import { asKept } from './keptRehearsal.ts';

// A cook is simulated whole.
vi.setConfig({ testTimeout: 30_000 });

const endMs = startMs + 5 * 3_600_000;

/** Kept, and counted as the store counts. */
function kept(events: readonly KnownEvent[]): readonly LogEvent[] {
  const [cook, bootId, device] = [randomUUID(), randomUUID(), randomUUID()];
  const made = asKept(events, { cook, bootId, tz: 'Europe/Brussels', endMs, random: () => randomBytes(10) });
  return made.map((event, place) => ({ ...event, device, deviceSeq: place + 1 }));
}

/** What a log says, without what it is called and by whom. */
function said(events: readonly LogEvent[]) {
  const { readings, deeds, stepIndex, mode, begun } = foldCook(events);
  const plain = ({ kind, timeS, body }: (typeof readings)[number] | (typeof deeds)[number]) => ({ kind, timeS, body });
  return { readings: readings.map(plain), deeds: deeds.map(plain), stepIndex, mode, begun: begun?.body };
}

describe('a whole rehearsal', () => {
  const { events } = cookedLog(defaultKit, 5, 'rehearsal');
  const after = kept(events);

  it('says the same as before, at the same times in the cook, and is a rehearsal still', () => {
    expect(said(after)).toEqual(said(events));
    expect(said(after).mode).toBe('rehearsal');
  });

  it('is taken by the API, each event under an id of its own that follows the one before', () => {
    for (const event of after) expect(eventSchema.safeParse(event).error).toBeUndefined();
    const ids = after.map(({ id }) => id);
    expect(new Set([...ids, ...events.map(({ id }) => id)]).size).toBe(ids.length + events.length);
    // The first 48 bits of a UUID of version 7 are its time.
    const times = ids.map((id) => id.slice(0, 13));
    expect(times).toEqual(times.toSorted());
  });

  it('is told as if it had gone at its own pace and ended when it was kept, however fast it was rehearsed', () => {
    const [first, last] = [after[0], after.at(-1) as LogEvent];
    expect(Date.parse(last.tDevice)).toBe(endMs);
    const lastedMs = (events.at(-1) as KnownEvent).tMono - events[0].tMono;
    expect(lastedMs).toBeGreaterThan(3_600_000);
    expect(Date.parse(first.tDevice)).toBe(endMs - lastedMs);
  });

  it('has an end, once: its own where it has one', () => {
    expect(after.filter(({ kind }) => kind === 'ended').map(({ body }) => body)).toEqual([{ how: 'done' }]);
    const device = sampleDevice('a');
    const left = kept([device.make('begun', begunBody, 0), device.make('ended', { how: 'abandoned' }, 60)]);
    expect(left.filter(({ kind }) => kind === 'ended').map(({ body }) => body)).toEqual([{ how: 'abandoned' }]);
  });
});

it('what was said of an earlier event is said of it still: a thermometer that was in degrees Fahrenheit all along', () => {
  const device = sampleDevice('a');
  const read = (atS: number) => device.make('reading', readingAsReceived('pan', 265, 'Cel'), atS);
  const [first, second] = [read(10), read(20)];
  const mixedUp = device.make('probeUnit', { probe: 'pan', unit: '[degF]', from: first.id }, 30);
  const events = [device.make('begun', begunBody, 0), first, second, mixedUp, read(40)];
  const celsius = (log: readonly LogEvent[]) => foldCook(log).readings.map(({ body }) => body.valueC);
  expect(celsius(events)).toEqual([129.4, 129.4, 129.4].map((value) => expect.closeTo(value, 1)));
  expect(celsius(kept(events))).toEqual(celsius(events));
});

it('corrections correct what they did', () => {
  const { events } = sampleCook(20);
  const known = events as KnownEvent[];
  expect(known.some(({ kind }) => kind === 'correction')).toBe(true);
  // One device after the other, as a store counts them.
  const inTime = known.toSorted((a, b) => a.tMono - b.tMono).filter(({ device }) => device === known[0].device);
  const struck = (log: readonly LogEvent[]) => foldCook(log).struckOut.map(({ kind, body }) => ({ kind, body }));
  expect(struck(kept(inTime))).toEqual(struck(inTime));
});
