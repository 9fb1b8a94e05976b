/** The documents of `umberpan colour`, `prime` and `handbook` with `--json`. */
import { z } from '../../api/zod.ts';
import { channels, lightKinds } from '../../core/colour/photo/viewer.ts';
import { paperPlaces } from '../../core/lot/note.ts';
import { amount, cautionSchema, eachOf, rangeSchema, rgbSchema } from './figures.ts';
import { sugarSchema } from './sugar.ts';

const onEveryScale = {
  specific430: rangeSchema.describe('Absorbance at 430 nm, L/(g cm).'),
  a430: rangeSchema,
  ebc: rangeSchema,
  srm: rangeSchema,
  icumsa: rangeSchema,
  hueIndex: amount,
  drop: rgbSchema,
  source: z.string(),
};

export const colourDocument = z
  .strictObject({ format: z.literal('umberpan-colour-1'), ...onEveryScale })
  .meta({ id: 'ColourDocument' });

const wideRange = z
  .strictObject({ low: amount, mid: amount, high: amount })
  .meta({ id: 'WideRange', description: 'The marks below which 5, 50 and 95 % of values lie.' });

const region = z.strictObject(eachOf(['left', 'top', 'width', 'height'] as const, amount).shape);

export const photographedDocument = z
  .strictObject({
    format: z.literal('umberpan-colour-photo-1'),
    ...onEveryScale,
    photo: z.strictObject({
      light: z.enum(lightKinds),
      paper: z.enum(paperPlaces),
      regions: z
        .strictObject({ sample: region, whites: z.array(region).min(1) })
        .describe('Where it was read, pixels of the file: as told, or as found.'),
      absorbance: eachOf(channels, amount).describe('Decadic, of each channel against white.'),
      sd: eachOf(channels, amount),
      a430Path: wideRange.describe('Absorbance at 430 nm over all of the light’s path, by a phone that nobody taught.'),
      ebc: wideRange,
    }),
  })
  .meta({ id: 'PhotographedColour' });

export const primeDocument = z
  .strictObject({
    format: z.literal('umberpan-prime-1'),
    request: z.strictObject({
      volumeL: amount,
      beerC: amount,
      wishGPerL: amount,
      vessel: z.string(),
      bottleL: amount,
      airPressurePa: amount,
    }),
    sugar: sugarSchema,
    residualGPerL: rangeSchema,
    massKg: rangeSchema,
    perBottleKg: rangeSchema,
    reachedGPerL: rangeSchema,
    reachedVolumes: rangeSchema,
    gaugePaAt20C: rangeSchema,
    gaugePaAt30C: rangeSchema,
    abvAdded: rangeSchema,
    ebcAdded: rangeSchema,
    cautions: z.array(cautionSchema),
    source: z.string(),
  })
  .meta({ id: 'PrimeDocument' });

/** What else a property tells carries its unit in its name, so the object stays open to such numbers. */
export const answerDocument = z
  .object({
    value: amount,
    unit: z.string().describe('UCUM.'),
    range: z.tuple([amount, amount]),
    rangeMeans: z.string(),
    valid: z.string(),
    source: z.string(),
    mark: z.string(),
    note: z.string().optional(),
  })
  .catchall(z.union([amount, z.array(amount), z.boolean()]))
  .meta({ id: 'HandbookAnswer' });

const input = z.strictObject({
  flag: z.string(),
  placeholder: z.string(),
  meaning: z.string(),
  required: z.boolean(),
  usual: z.string().optional(),
});

export const propertiesDocument = z
  .array(
    z.strictObject({
      name: z.string(),
      meaning: z.string(),
      unit: z.string(),
      valid: z.string(),
      source: z.string(),
      mark: z.string(),
      inputs: z.array(input),
      example: z.string(),
    }),
  )
  .meta({ id: 'HandbookList' });

export const parametersDocument = z
  .array(
    z.strictObject({
      name: z.string(),
      meaning: z.string(),
      mean: amount,
      centre: amount,
      sd: amount.describe('Of the value, or of its natural logarithm when the spread is lognormal.'),
      spread: z.enum(['normal', 'lognormal']),
      within: z.tuple([amount, amount]).optional(),
      unit: z.string(),
      source: z.string(),
      mark: z.string(),
      sdReason: z.string(),
    }),
  )
  .meta({ id: 'ModelParameters' });
