/** A note on a lot as it comes in through the API, and as the store gives it back: an instrument's reading, a tasting, a change of the stock. */
import { lightKinds } from '../core/colour/photo/viewer.ts';
import {
  acidityMeans,
  hydrometerScales,
  longestWhy,
  paperPlaces,
  noteRanges as ranges,
  stockMoves,
  wavelengths,
} from '../core/lot/note.ts';
import { type Descriptor, descriptors, longestNote, strengthRange, textures } from '../core/lot/taste.ts';
import { countIn, exactly, numberIn, oneOf, recordId } from './field.ts';
import { refusal } from './refusalWords.ts';
import { z } from './zod.ts';

const at = z.iso
  .datetime({ precision: 3, error: 'is not a time; allowed: RFC 3339 in UTC with milliseconds' })
  .describe('When it was done.');
const mixed = {
  sugarG: numberIn(ranges.sugarG).describe('Sugar weighed in, g.'),
  waterG: numberIn(ranges.waterG).describe('Water weighed to it, g; 0 for the sugar as it is.'),
};
const madeUp = {
  sugarG: numberIn(ranges.sugarG).describe('Sugar weighed in, g.'),
  totalMl: numberIn(ranges.totalMl).describe('Volume that it was made up to, mL.'),
  fold: numberIn(ranges.fold).describe('How many fold that was thinned again; 1 for not at all.'),
};

function perChannel(each: ReturnType<typeof numberIn>) {
  return exactly({ r: each, g: each, b: each });
}

const readings = [
  exactly({
    method: z.literal('refractometer'),
    ...mixed,
    brix: numberIn(ranges.brix),
    temperatureC: numberIn(ranges.temperatureC),
    compensated: z.boolean().describe('The instrument corrects for temperature by itself.'),
  }),
  exactly({
    method: z.literal('hydrometer'),
    ...mixed,
    scale: oneOf(hydrometerScales),
    reading: numberIn([0, ranges.brix[1]]).describe('Degrees Brix, or gravity 20/20.'),
    temperatureC: numberIn(ranges.temperatureC),
  }),
  exactly({ method: z.literal('acidity'), ...mixed, by: oneOf(acidityMeans), ph: numberIn(ranges.ph) }),
  exactly({
    method: z.literal('absorbance'),
    ...madeUp,
    wavelengthNm: z.union(
      wavelengths.map((nm) => z.literal(nm)),
      { error: refusal(wavelengths.join(', ')) },
    ),
    absorbance: numberIn(ranges.absorbance).describe('Less that of water in the same cell.'),
    pathCm: numberIn(ranges.pathCm),
  }),
  exactly({
    method: z.literal('comparison'),
    ...madeUp,
    a430PerCm: numberIn(ranges.a430PerCm).describe('Of the dilution that the chosen swatch was computed for.'),
    step: numberIn(ranges.step).describe('How much darker each swatch was than the one before, as a factor.'),
    depthCm: numberIn(ranges.depthCm).describe('Of the liquid over white.'),
    taught: z
      .boolean()
      .optional()
      .describe('The swatches were drawn for what the screen makes of greys. Left out: they were not.'),
  }),
  exactly({
    method: z.literal('photo'),
    ...madeUp,
    light: oneOf(lightKinds),
    paper: oneOf(paperPlaces).describe(
      'Where the white paper was: behind is seen through the glass once, below twice.',
    ),
    pathCm: numberIn(ranges.pathCm).describe('Of the liquid along the line of sight.'),
    absorbance: perChannel(numberIn(ranges.channelAbsorbance)).describe('Of each channel against white.'),
    sd: perChannel(numberIn(ranges.channelSd)).describe('1 sd of each.'),
    a430Path: numberIn(ranges.a430Path).describe('Absorbance at 430 nm over all of the path of the light.'),
    within: numberIn(ranges.within).describe('1 sd of its logarithm.'),
    taught: z.boolean().describe('Dilutions of known colour narrowed what camera it may be.'),
  }),
] as const;

const methods = readings.map(({ shape }) => [...shape.method.values][0]).join(', ');
const strength = countIn(strengthRange).nullable();
const strengths = Object.fromEntries(descriptors.map((name) => [name, strength])) as Record<
  Descriptor,
  typeof strength
>;

export const strengthsSchema = exactly(strengths).describe('0 none to 5 very strong; null for what was not asked.');

function lineUpTo(most: number) {
  const error = refusal(`up to ${most} characters`);
  return z.string({ error }).max(most, { error });
}

export const noteSchema = z
  .discriminatedUnion(
    'kind',
    [
      exactly({
        kind: z.literal('measured'),
        at,
        reading: z.discriminatedUnion('method', readings, { error: refusal(`a reading by ${methods}`) }),
      }),
      exactly({
        kind: z.literal('tasted'),
        at,
        strengths: strengthsSchema,
        texture: oneOf(textures).nullable(),
        note: lineUpTo(longestNote),
        blind: z.boolean().describe('The taster did not know which lot it was.'),
      }),
      exactly({
        kind: z.literal('stocked'),
        at,
        how: oneOf(stockMoves),
        kg: numberIn(ranges.kg).describe('Taken out or put in; of a count, all that there is.'),
        why: lineUpTo(longestWhy),
      }),
    ],
    { error: refusal('a note of the kind measured, tasted or stocked') },
  )
  .meta({ id: 'LotNote' });

export const noteRecordSchema = z
  .object({ id: recordId(), created: z.iso.datetime(), note: noteSchema })
  .meta({ id: 'LotNoteRecord' });

export type NewNote = z.infer<typeof noteSchema>;
export type NoteRecord = z.infer<typeof noteRecordSchema>;
