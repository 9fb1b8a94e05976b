/** An event of a cook as it comes in and goes out: an exact envelope, and a body for each kind. */
import type { EventKind } from '../core/log/bodies.ts';
import { instantMs } from '../core/log/instant.ts';
import { eventRanges as ranges } from '../core/log/ranges.ts';
import { upgrades } from '../core/log/upgrade.ts';
import { eventBodySchemas as bodies, kindError } from './eventBodies.ts';
import { countIn, exactly, numberIn, recordId } from './field.ts';
import { refusal } from './refusalWords.ts';
import { z } from './zod.ts';

const timeRefused = refusal('a time that exists, such as 2031-05-09T18:30:00.000Z');
const zoneRefused = refusal('the name of a time zone, such as Europe/Brussels');

const instant = z
  .string({ error: timeRefused })
  .refine(isInstant, { error: timeRefused })
  .meta({ format: 'date-time' });

const envelope = {
  id: z.uuidv7({ error: refusal('a UUID of version 7') }),
  cook: recordId(),
  device: recordId(),
  deviceSeq: countIn(ranges.deviceSeq),
  tDevice: instant.describe("The device's wall clock."),
  tMono: numberIn(ranges.tMono).describe("The device's monotonic clock, ms."),
  bootId: recordId().describe('One unbroken run of the monotonic clock.'),
  clockOffsetMs: numberIn(ranges.clockOffsetMs)
    .nullable()
    .describe("Server's clock less the device's, as last measured."),
  clockErrMs: numberIn(ranges.clockErrMs).nullable(),
  tz: z.string({ error: zoneRefused }).regex(/^[A-Za-z][\w+/-]{0,63}$/, { error: zoneRefused }),
};

function eventOf<K extends EventKind>(kind: K) {
  const version = upgrades[kind].length + 1;
  const v = z.literal(version, { error: refusal(String(version)) }).describe('Version of the body.');
  return exactly({ ...envelope, kind: z.literal(kind, { error: refusal(kind) }), v, body: bodies[kind] });
}

export const begunEventSchema = eventOf('begun').meta({ id: 'BegunEvent' });

export const eventSchema = z
  .discriminatedUnion(
    'kind',
    [
      begunEventSchema,
      eventOf('reading'),
      eventOf('heat'),
      eventOf('water'),
      eventOf('alkali'),
      eventOf('stir'),
      eventOf('spoonTest'),
      eventOf('note'),
      eventOf('photo'),
      eventOf('step'),
      eventOf('poured'),
      eventOf('weight'),
      eventOf('dilutionPh'),
      eventOf('dilutionBrix'),
      eventOf('foam'),
      eventOf('here'),
      eventOf('vouched'),
      eventOf('probeUnit'),
      eventOf('seen'),
      eventOf('putAside'),
      eventOf('clock'),
      eventOf('correction'),
      eventOf('ended'),
    ],
    { error: kindError(Object.keys(bodies)) },
  )
  .meta({ id: 'Event' });

/** Up to this many events go in together, all or none. */
export const mostTogether = 500;

const batchRefused = refusal(`1 to ${mostTogether} events`);

export const eventBatchSchema = z
  .array(eventSchema)
  .min(1, { error: batchRefused })
  .max(mostTogether, { error: batchRefused });

/** The schema of an event for other programs, JSON Schema 2020-12. */
export function eventJsonSchema() {
  return { $id: 'urn:umberpan:event:1', title: 'An event of a cook', ...z.toJSONSchema(eventSchema) };
}

/** What the server says of an event that is on its disk. */
export const receiptSchema = z
  .object({
    id: recordId(),
    seq: z.int().describe("The event's place in the store: rises with every event."),
    tServer: instant.describe('When the event came in.'),
    hash: z.string().describe('Its link of the hash chain.'),
  })
  .meta({ id: 'Receipt' });

/** An event as the store gives it: of any kind, also one that only a later Umberpan knows. */
export const stampedEventSchema = z
  .looseObject({
    id: z.string(),
    cook: z.string(),
    device: z.string(),
    deviceSeq: z.number(),
    kind: z.string(),
    v: z.number(),
    tDevice: z.string(),
    tMono: z.number(),
    bootId: z.string(),
    clockOffsetMs: z.number().nullable(),
    clockErrMs: z.number().nullable(),
    tz: z.string(),
    body: z.unknown(),
    seq: z.int(),
    tServer: z.string(),
    prevHash: z.string(),
    hash: z.string(),
  })
  .meta({ id: 'StampedEvent' });

function isInstant(text: string): boolean {
  try {
    instantMs(text);
    return true;
  } catch {
    return false;
  }
}
