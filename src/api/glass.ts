/** A glass of beer as it comes in through the API, and as the store gives it back: the rest of the beer, and the sugars in it. */
import { glassRanges as ranges, type WhenAdded } from '../core/beer/glass.ts';
import { keptGlassRanges, mostDoses } from '../core/beer/keptGlass.ts';
import { exactly, numberIn, oneOf, personsName, recordId } from './field.ts';
import { alkaliSchema } from './lot.ts';
import { refusal } from './refusalWords.ts';
import { z } from './zod.ts';

const ways = ['kettle', 'late', 'fermenter'] as const satisfies WhenAdded[];

const told = {
  alkali: alkaliSchema,
  fermentable: numberIn(keptGlassRanges.fermentable)
    .nullable()
    .describe('Share of the solids that yeast took in a forced ferment; null to go by the colour.'),
  pricePerKg: numberIn(keptGlassRanges.pricePerKg).nullable().describe("In the user's own currency."),
};

const lotSugarSchema = exactly({
  kind: z.literal('lot'),
  lotId: recordId().describe('It may reach the server later.'),
  ...told,
});

const boughtSugarSchema = exactly({
  kind: z.literal('bought'),
  name: personsName(80),
  solids: numberIn(keptGlassRanges.solids).describe('Dry solids, share of the mass.'),
  specific430AsIs: numberIn(keptGlassRanges.specific430AsIs).describe(
    'Absorbance at 430 nm per cm for each gram of it, as it is, in a litre.',
  ),
  inverted: numberIn(keptGlassRanges.inverted)
    .nullable()
    .describe('Share of its sucrose that is inverted; null when nobody said.'),
  ...told,
});

const doseSchema = exactly({
  sugar: z.discriminatedUnion('kind', [lotSugarSchema, boughtSugarSchema], {
    error: refusal('a lot or a bought sugar'),
  }),
  massKg: numberIn(ranges.massKg),
  added: oneOf(ways),
});

const calendarDay = z.iso.date({ error: refusal('a day such as 2031-05-09') });

export const newGlassSchema = exactly({
  name: personsName(80),
  rest: exactly({
    volumeL: numberIn(ranges.volumeL),
    gravity: numberIn(ranges.gravity),
    a430PerCm: numberIn(ranges.a430PerCm),
    attenuation: numberIn(ranges.attenuation),
    sodiumMgPerL: numberIn(ranges.sodiumMgPerL),
    calciumMgPerL: numberIn(ranges.calciumMgPerL),
  }).describe('The beer without its sugars.'),
  doses: z
    .array(doseSchema)
    .max(mostDoses, { error: `has too many; allowed: up to ${mostDoses}` })
    .readonly(),
  kettleLossL: numberIn(ranges.kettleLossL),
  pathCm: numberIn(ranges.pathCm).describe('Way of the light through the drawn glass.'),
  boughtPricePerKg: numberIn(keptGlassRanges.pricePerKg)
    .nullable()
    .describe('For a kg of solids of the sugar that would be bought instead.'),
  bottledOn: calendarDay.nullable().describe('null before it was bottled.'),
}).meta({ id: 'NewGlass' });

/** `version` counts the glass's changes from 1; a change must name the version that it was made from. */
export const glassRecordSchema = z
  .object({
    id: recordId(),
    version: z.int().min(1),
    created: z.iso.datetime(),
    updated: z.iso.datetime(),
    glass: newGlassSchema,
  })
  .meta({ id: 'GlassRecord' });

export type NewGlass = z.infer<typeof newGlassSchema>;
export type GlassRecord = z.infer<typeof glassRecordSchema>;
