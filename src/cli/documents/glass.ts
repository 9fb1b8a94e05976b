/** The documents of `umberpan glass --json`, by what was asked. */
import { z } from '../../api/zod.ts';
import { formulas } from '../../core/beer/formulas.ts';
import { amount, cautionSchema, count, eachOf, rangeSchema, rgbSchema } from './figures.ts';
import { sugarSchema } from './sugar.ts';

const format = z.literal('umberpan-glass-1');

const glass = z
  .strictObject({
    rest: z
      .strictObject({
        volumeL: amount,
        gravity: amount,
        a430PerCm: amount,
        attenuation: amount.describe('Apparent, share of one.'),
        sodiumMgPerL: amount,
        calciumMgPerL: amount,
      })
      .describe('The beer without its sugars.'),
    doses: z.array(
      z.strictObject({ sugar: sugarSchema, massKg: amount, added: z.enum(['kettle', 'late', 'fermenter']) }),
    ),
    kettleLossL: amount,
    pathCm: amount.describe('Way of the light through the drawn glass.'),
  })
  .meta({ id: 'Glass' });

const numbers = z
  .strictObject({
    volumeL: rangeSchema,
    originalPlato: rangeSchema,
    originalGravity: rangeSchema,
    extractShare: rangeSchema.describe('Share of the original extract that the sugars bring.'),
    a430PerCm: rangeSchema,
    sugarsA430PerCm: rangeSchema,
    pitchingGravity: rangeSchema.describe('Without what is added in the fermenter.'),
    inversionGainPlato: rangeSchema.describe('By how much the extract grows as sucrose is inverted.'),
    fermentability: rangeSchema.describe('Share of the sugars’ solids that yeast takes.'),
    realPlato: rangeSchema,
    apparentPlato: rangeSchema,
    finalGravity: rangeSchema,
    realAttenuation: rangeSchema,
    apparentAttenuation: rangeSchema,
    abv: rangeSchema.describe('Per cent by volume.'),
    abvByRegression: rangeSchema,
    sodiumMgPerL: rangeSchema.describe('From the sugars.'),
    calciumMgPerL: rangeSchema.describe('From the sugars.'),
    kcalPer100mL: rangeSchema,
  })
  .meta({ id: 'BeerNumbers' });

const empirical = z.strictObject({
  srm: rangeSchema,
  outside: z.boolean().describe('Whether that is beyond what the formula was fitted to.'),
  partsFromGPerL: amount.nullable().describe('Sugar from which on the two colours differ by more than a tenth.'),
});

const drawn = z.strictObject({
  pathCm: amount,
  without: rgbSchema,
  withSugars: eachOf(['low', 'mid', 'high'], rgbSchema),
  difference: amount.describe('CIEDE2000 between without and with.'),
});

const beer = {
  glass,
  beer: numbers,
  without: numbers.describe('The same beer without the sugars.'),
  ebc: rangeSchema,
  srm: rangeSchema,
  sugarsEbc: rangeSchema.describe('Of the sugars alone.'),
  empirical: empirical.describe('Colour by the usual formula for malt, to compare.'),
  drawn: drawn.describe('As the glass looks in daylight.'),
  cost: z
    .strictObject({
      sugars: rangeSchema,
      perLitre: rangeSchema,
      bought: rangeSchema.nullable().describe('The same solids of a bought sugar; null without its price.'),
    })
    .nullable()
    .describe('Null where the price of a sugar is not known.'),
  cautions: z.array(cautionSchema),
  formulas: eachOf(Object.keys(formulas), z.string()).describe('By which each number is made.'),
};

const unfit = z
  .array(z.strictObject({ name: z.string(), why: z.string() }))
  .describe('Sugars that do not do it alone.');

export const glassBeer = z.strictObject({ format, kind: z.literal('beer'), ...beer }).meta({ id: 'GlassBeer' });

export const glassSwap = z
  .strictObject({
    format,
    kind: z.literal('swap'),
    ...beer,
    equal: z.enum(['colour', 'extract']),
    massKg: rangeSchema.describe('Of the sugar that is taken instead.'),
  })
  .meta({ id: 'GlassSwap' });

const use = z.strictObject({
  candidate: count.describe('Place among the sugars without a mass, from 0.'),
  massKg: amount,
  massRangeKg: rangeSchema.nullable().describe('Null for two together, where one makes up for the other.'),
});

export const glassWays = z
  .strictObject({
    format,
    kind: z.literal('ways'),
    ways: z.array(z.strictObject({ ...glassBeer.shape, uses: z.array(use) })),
    unfit,
  })
  .meta({ id: 'GlassWays' });

export const glassAim = z
  .strictObject({
    format,
    kind: z.literal('aim'),
    aim: z.strictObject({
      massKg: amount.describe('Hard sugar.'),
      massRangeKg: rangeSchema,
      a430: amount.nullable().describe('Of a 10 % w/w solution; null where no colour was wished.'),
      ebc: amount.nullable(),
      a430Range: rangeSchema.nullable(),
      ebcRange: rangeSchema.nullable(),
      darkerThanKitchen: z.boolean().describe('Whether no kitchen makes it so dark.'),
    }),
    unfit,
  })
  .meta({ id: 'GlassAim' });
