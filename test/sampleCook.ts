// Events of invented cooks, for tests: made by devices with clocks of their own, as a page or a thermometer makes them.
import { createHash, randomBytes, randomUUID } from 'node:crypto';
import type { Begun, EventBodies, EventKind } from '../src/core/log/bodies.ts';
import type { EventOf } from '../src/core/log/event.ts';
import { eventId } from '../src/core/log/eventId.ts';
import { defaultKit } from '../src/core/pan/kit.ts';
import { defaultRequest } from '../src/core/planning/request.ts';

export const sha256 = (text: string) => createHash('sha256').update(text).digest('hex');

/** Half past six in the evening, 9 May 2031. */
export const startMs = Date.UTC(2031, 4, 9, 18, 30);

const part = { substance: 'sodiumHydroxide', alkaliKg: 0.0007, waterKg: 0.0028 } as const;

export const begunBody: Begun = {
  mode: 'live',
  rehearsal: null,
  planId: null,
  request: defaultRequest,
  amounts: {
    charge: { sucroseKg: 0.42, waterKg: 0.139, maltExtractKg: 0.0034, citricAcidKg: 0 },
    alkali: {
      substance: 'sodiumHydroxide',
      weighedKg: 0.00217,
      pureKg: 0.0021,
      waterKg: 0.0083,
      strength: 0.2,
      parts: [part, part, part],
      equivalents: 0.0525,
    },
  },
  steps: [
    {
      kind: 'invert',
      bandC: [127, 133],
      end: { heldMinutes: 30 },
      approachNotch: 5,
      holdNotch: 3,
      alkali: [],
      waitS: 0,
    },
    {
      kind: 'brown',
      bandC: [137, 143],
      end: { heldMinutes: 25 },
      approachNotch: 5,
      holdNotch: 4,
      alkali: [part],
      waitS: 30,
    },
  ],
  kit: defaultKit,
};

/** One body of each kind but a beginning and a correction. */
export const sampleBodies = {
  reading: { probe: 'pan', valueC: 121.4, quality: 'fresh', unit: 'Cel', raw: 121.4 },
  heat: { notch: 4 },
  water: { waterKg: 0.0049, spoonfuls: 1, spoon: 'teaspoon' },
  alkali: { part: 1, ...part },
  stir: {},
  spoonTest: { a430: 12.5, behaviour: 'snaps', taste: ['raisin', 'toast'] },
  note: { text: 'smells of plums\nfoam is lower' },
  photo: { reference: 'dilution-1' },
  step: { index: 1 },
  poured: {},
  weight: { grossKg: 1.31, tareKg: 0.9 },
  dilutionPh: { ph: 5.1, syrupKg: 0.01, waterKg: 0.09 },
  dilutionBrix: { brix: 9.2, syrupKg: 0.01, waterKg: 0.09, temperatureC: 21 },
  foam: { rising: true },
  here: {},
  vouched: { probe: 'pan' },
  probeUnit: { probe: 'pan', unit: '[degF]', from: null },
  seen: { alarm: 'probe-lost' },
  putAside: { alarm: 'probe-doubtful', forS: 300, reason: 'second thermometer agrees' },
  clock: { wallMs: 7_203_000, monoMs: 3000 },
  ended: { how: 'done' },
} as const satisfies Omit<EventBodies, 'begun' | 'correction'>;

export interface DeviceClock {
  /** How far the wall clock is ahead of the true time, ms. */
  readonly aheadMs?: number;
  /** True time at which the monotonic clock showed 0, ms before the start. */
  readonly upForMs?: number;
  readonly measured?: boolean;
}

/** A device that makes events of one cook at the true times it is told. */
export function sampleDevice(cook: string, clock: DeviceClock = {}, device: string = randomUUID()) {
  const { aheadMs = 0, upForMs = 60_000, measured = true } = clock;
  const bootId = randomUUID();
  let deviceSeq = 0;
  return {
    device,
    /** @param atS true time, s after the start */
    make<K extends EventKind>(kind: K, body: EventBodies[K], atS: number, more: Partial<EventOf<K>> = {}): EventOf<K> {
      const trueMs = startMs + Math.round(atS * 1000);
      deviceSeq += 1;
      return {
        id: eventId(trueMs + aheadMs, randomBytes(10)),
        cook,
        device,
        deviceSeq,
        kind,
        v: 1,
        tDevice: new Date(trueMs + aheadMs).toISOString(),
        tMono: trueMs - startMs + upForMs,
        bootId,
        clockOffsetMs: measured ? -aheadMs : null,
        clockErrMs: measured ? 12 : null,
        tz: 'Europe/Brussels',
        body,
        ...more,
      };
    },
  };
}

/** A cook of `readings` readings, one each second, with a deed or two of every kind and some corrections. */
export function sampleCook(readings = 40, cook: string = randomUUID()) {
  const phone = sampleDevice(cook, { aheadMs: 7_200_000 });
  const laptop = sampleDevice(cook, { aheadMs: -90_000, upForMs: 1e6 });
  const begun = phone.make('begun', begunBody, 0);
  const events: EventOf<EventKind>[] = [begun];
  for (let second = 1; second <= readings; second++) {
    const valueC = 100 + second / 4;
    events.push(phone.make('reading', { ...sampleBodies.reading, valueC, raw: valueC }, second));
  }
  for (const [place, [kind, body]] of Object.entries(sampleBodies).entries()) {
    events.push(laptop.make(kind as EventKind, body as EventBodies[EventKind], 1.5 + 2 * place));
  }
  const reading = events[3];
  const water = events.find(({ kind }) => kind === 'water') as EventOf<'water'>;
  const heat = events.find(({ kind }) => kind === 'heat') as EventOf<'heat'>;
  const more = { ...sampleBodies.water, spoonfuls: 2, waterKg: 0.0098 };
  events.push(
    phone.make('correction', { corrects: water.id, kind: 'water', body: more }, readings + 1),
    phone.make('correction', { corrects: heat.id, kind: 'heat', body: null }, readings + 2),
    laptop.make('correction', { corrects: reading.id, kind: 'reading', body: null }, readings + 3),
  );
  const last = events.at(-1) as EventOf<'correction'>;
  events.push(phone.make('correction', { corrects: last.id, kind: 'correction', body: null }, readings + 4));
  return { cook, begun, events, water, heat, reading };
}
