/** A lot as it comes in through the API, and as the store gives it back. What was believed at the pour never changes. */
import { alkaliGPerKgRange, lotMassKg, origins } from '../core/lot/lot.ts';
import { type ExpectedName, expectedNames } from '../core/lot/yield.ts';
import type { Alkali, Form } from '../core/planning/request.ts';
import { exactly, numberIn, oneOf, personsName, recordId } from './field.ts';
import { noteRecordSchema } from './lotNote.ts';
import { z } from './zod.ts';

const forms = ['hard', 'syrup'] as const satisfies Form[];
const alkalis = ['sodiumHydroxide', 'calciumHydroxide'] as const satisfies Alkali[];

export const alkaliSchema = exactly({ substance: oneOf(alkalis), gramsPerKgSucrose: numberIn(alkaliGPerKgRange) })
  .nullable()
  .describe('What browned it, pure, for each kg of sucrose in the pan; 0 g for none; null when nobody said.');

const limits: Readonly<Record<ExpectedName, readonly [number, number]>> = {
  massKg: [0, lotMassKg[1]],
  waterShare: [0, 1],
  inverted: [0, 1],
  a430: [0, 1e4],
  ebc: [0, 1e6],
  srm: [0, 1e6],
  icumsa: [0, 1e9],
};

const meanings: Readonly<Record<ExpectedName, string>> = {
  massKg: 'Mass of the sugar, kg.',
  waterShare: 'Water, share of the mass.',
  inverted: 'Sucrose that is inverted, share of its moles.',
  a430: 'Absorbance at 430 nm per cm of a 10 % w/w solution.',
  ebc: 'EBC of a 10 % w/w solution.',
  srm: 'SRM of a 10 % w/w solution.',
  icumsa: 'ICUMSA units at 420 nm.',
};

function rangeOf(name: ExpectedName) {
  const number = numberIn(limits[name]);
  return exactly({ low: number, mid: number, high: number })
    .refine(({ low, mid, high }) => low <= mid && mid <= high, {
      error: 'is not in order; allowed: low, mid and high, rising',
    })
    .describe(`${meanings[name]} The marks below which 10, 50 and 90 % lie.`);
}

const expectedShape = Object.fromEntries(expectedNames.map((name) => [name, rangeOf(name)])) as Record<
  ExpectedName,
  ReturnType<typeof rangeOf>
>;

/** What a person says of a lot, and may change later. */
const changeable = {
  name: personsName(80),
  weighedKg: numberIn(lotMassKg).nullable().describe('On the scale when it was made, kg; null before it was weighed.'),
};

export const lotChangeSchema = exactly({
  ...changeable,
  alkali: alkaliSchema.optional().describe('Stays as it is when left out.'),
}).meta({ id: 'LotChange' });

export const newLotSchema = exactly({
  ...changeable,
  alkali: alkaliSchema.default(null),
  origin: oneOf(origins).default('cooked').describe('Cooked, poured from a simulated pan, or told by hand.'),
  cookId: recordId().nullable().describe('The cook; null for one that is not kept. It may reach the server later.'),
  planId: recordId().nullable().describe('The plan; null for one that is not kept.'),
  madeAt: z.iso
    .datetime({ precision: 3, error: 'is not a time; allowed: RFC 3339 in UTC with milliseconds' })
    .describe('When it was poured.'),
  form: oneOf(forms),
  expected: exactly(expectedShape).describe('As the twin believed at the pour.'),
}).meta({ id: 'NewLot' });

/** `version` counts the lot's changes from 1; a change must name the version that it was made from. */
export const lotRecordSchema = z
  .object({
    id: recordId(),
    version: z.int().min(1),
    created: z.iso.datetime(),
    updated: z.iso.datetime(),
    removed: z.iso
      .datetime()
      .nullable()
      .default(null)
      .describe('When it was taken off the shelf; null while it stands there.'),
    lot: newLotSchema,
    notes: z.array(noteRecordSchema).default([]).describe('What was measured, tasted and taken, the earliest first.'),
  })
  .meta({ id: 'LotRecord' });

/** As it comes in: what may be left out is filled in. */
export type NewLot = z.input<typeof newLotSchema>;
export type KeptLot = z.infer<typeof newLotSchema>;
export type LotChange = z.infer<typeof lotChangeSchema>;
export type LotRecord = z.infer<typeof lotRecordSchema>;
