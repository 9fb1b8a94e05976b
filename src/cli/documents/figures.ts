/** What documents of the command line are made of. */
import { z } from '../../api/zod.ts';
import { tasteNames } from '../../core/planning/taste.ts';

export const amount = z.number();
export const count = z.int().nonnegative();

/** An object with a field of one kind for each of these names. */
export function eachOf<Name extends string, Field extends z.ZodType>(names: readonly Name[], field: Field) {
  return z.strictObject(Object.fromEntries(names.map((name) => [name, field])) as Record<Name, Field>);
}

export const rangeSchema = z
  .strictObject({ low: amount, mid: amount, high: amount })
  .meta({ id: 'Range', description: 'The marks below which 10, 50 and 90 % of values lie.' });

export const rgbSchema = z.strictObject({ r: amount, g: amount, b: amount, clipped: z.boolean() }).meta({
  id: 'ScreenColour',
  description: 'sRGB, 0 to 255; clipped: darker or more saturated than a screen can show.',
});

export const cautionSchema = z
  .strictObject({
    id: z.string(),
    level: z.enum(['note', 'warning', 'strong warning']),
    text: z.string(),
    source: z.string(),
    date: z.iso.date().describe('When it was written down.'),
    region: z.string().describe('ISO 3166 code, `EU`, or `any`.'),
  })
  .meta({ id: 'Caution' });

export const refusalSchema = z
  .strictObject({ limit: z.string(), field: z.string(), message: z.string() })
  .meta({ id: 'Refusal', description: 'A limit of safety that is broken.' });

export const alkaliPartSchema = z.strictObject({ substance: z.string(), alkaliKg: amount, waterKg: amount }).meta({
  id: 'AlkaliPart',
  description: 'Pure alkali, and the water that it is dissolved or slurried in.',
});

/** What was done to the pan, by its kind, with what else is told of it. */
export function deedWith<More extends z.ZodRawShape>(more: More) {
  return z.discriminatedUnion('kind', [
    z.strictObject({ ...more, kind: z.literal('heat'), notch: amount }),
    z.strictObject({
      ...more,
      kind: z.literal('water'),
      waterKg: amount,
      spoonfuls: amount.describe('0 where it was measured otherwise.'),
    }),
    z.strictObject({ ...more, kind: z.literal('alkali'), part: alkaliPartSchema }),
    z.strictObject({
      ...more,
      kind: z.literal('step'),
      index: count.describe('Place among the plan’s steps, from 0.'),
    }),
    z.strictObject({ ...more, kind: z.literal('pour') }),
  ]);
}

/** What a simulated cook makes. */
export const madeSchema = z.strictObject({
  a430: amount.describe('Absorbance at 430 nm per cm of a 10 % w/w solution.'),
  specific430: amount.describe('Absorbance at 430 nm of the dry sugar, L/(g cm).'),
  hueIndex: amount,
  waterShare: amount,
  inverted: amount.describe('Share of the sucrose.'),
  minutes: amount,
  yieldKg: amount,
  taste: eachOf(tasteNames, amount).describe('Indices from 0 to 10 of the model’s own.'),
});
