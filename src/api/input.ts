/** Thermometers that the server listens to, and how each of them does. */

import { readingQualities, readingUnits } from '../core/log/bodies.ts';
import { readingFaults } from '../core/log/markReading.ts';
import { countIn, exactly, numberIn, oneOf, personsName } from './field.ts';
import { patternTrouble } from './linePattern.ts';
import { refusal } from './refusalWords.ts';
import { z } from './zod.ts';

function text(most: number, form: RegExp, allowed: string) {
  const error = refusal(allowed);
  return z.string({ error }).max(most, { error }).regex(form, { error });
}

const secret = text(200, /^\P{Cc}*$/u, 'up to 200 characters').nullable();
const topic = text(200, /^[^+#\p{Cc}]+$/u, 'a topic of up to 200 characters, without + and #');

const declared = {
  name: personsName(40).describe('What the input is called in the list.'),
  probe: personsName(40).describe('Which thermometer.'),
  unit: oneOf(readingUnits),
  everyS: numberIn([0.2, 60]).describe('How often it sends, s; what comes more than twice as often is passed over.'),
  on: z.boolean({ error: refusal('true or false') }),
};

const mqtt = exactly({
  kind: z.literal('mqtt'),
  ...declared,
  broker: text(
    200,
    /^(own|mqtts?:\/\/(\[[\da-f:]+\]|[\w.-]+)(:\d{1,5})?)$/i,
    'mqtt://name or mqtt://name:1883, also mqtts://; or own',
  ).describe('Where it publishes; own: to Umberpan itself, which was started with `--broker`.'),
  user: secret.default(null),
  password: secret.optional().describe('Never told again; left out of a change, it stays as it was.'),
  topic,
  path: text(200, /^\P{Cc}*$/u, 'names and numbers with dots between, such as outer.temperature').describe(
    'Where the number stands in a JSON message; empty when the message is the number.',
  ),
  goneTopic: topic.nullable().default(null).describe('Where the thermometer, or its will, says that it is gone.'),
  goneText: text(100, /^\P{Cc}*$/u, 'up to 100 characters').default('offline'),
});

const serial = exactly({
  kind: z.literal('serial'),
  ...declared,
  port: text(100, /^(\/dev\/(?!.*\.\.)[\w./-]+|COM\d{1,3})$/, 'a port such as /dev/ttyUSB0 or COM3'),
  baud: countIn([300, 1_000_000]),
  pattern: z
    .string({ error: refusal('a line with {} where the number stands') })
    .max(100, { error: refusal('up to 100 characters') })
    .superRefine((pattern, context) => {
      const trouble = patternTrouble(pattern);
      if (trouble) context.addIssue({ code: 'custom', message: trouble });
    }),
});

export const inputSchema = z.discriminatedUnion('kind', [mqtt, serial], { error: refusal('mqtt or serial, as kind') });
export type Input = z.infer<typeof inputSchema>;
export type MqttInput = Extract<Input, { kind: 'mqtt' }>;
export type SerialInput = Extract<Input, { kind: 'serial' }>;

export const inputStates = ['off', 'connecting', 'waiting', 'hearing', 'silent', 'gone', 'failing'] as const;
export type InputState = (typeof inputStates)[number];

const heardSchema = z.object({
  at: z.iso.datetime({ precision: 3 }),
  raw: z.union([z.number(), z.string(), z.null()]),
  valueC: z.number().nullable(),
  quality: z.enum(readingQualities),
  fault: z.enum(readingFaults).nullable(),
});
export type Heard = z.infer<typeof heardSchema>;

const statusSchema = z.object({
  state: z.enum(inputStates),
  reason: z.string().nullable().describe('Why it fails, or why the last message was passed over.'),
  heard: z.int(),
  passedOver: z.int(),
  last: z.array(heardSchema).describe('The last five, the newest first.'),
  cook: z.object({ id: z.uuid(), name: z.string() }).nullable().describe('The cook that readings go to now.'),
});
export type InputStatus = z.infer<typeof statusSchema>;

/** What is kept, but for the password. */
const shown = z.discriminatedUnion('kind', [
  mqtt.omit({ password: true }).extend({ hasPassword: z.boolean() }),
  serial,
]);

export const inputRecordSchema = z.object({ id: z.uuid(), input: shown, status: statusSchema });
export type InputRecord = z.infer<typeof inputRecordSchema>;

export const inputListSchema = z.object({
  inputs: z.array(inputRecordSchema),
  broker: z
    .array(z.string())
    .nullable()
    .describe("Addresses of Umberpan's own MQTT broker, the likeliest first; null when it was started without one."),
});
export type InputList = z.infer<typeof inputListSchema>;

export const portsSchema = z.object({
  ports: z.array(z.object({ port: z.string(), name: z.string().nullable() })),
});
export type Ports = z.infer<typeof portsSchema>;
