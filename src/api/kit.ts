/** A kit as it comes in through the API, a form or a file, and as the store gives it back. */
import { cholesky } from '../core/pan/cholesky.ts';
import type { PanMaterial, StoveKind, ThermometerKind } from '../core/pan/kit.ts';
import { defaultKit, type PricedThing, pricedThings, kitRanges as ranges } from '../core/pan/kit.ts';
import { modelParameters } from '../core/pan/model.ts';
import type { ModelParameter } from '../core/pan/physics.ts';
import { exactly, numberIn, oneOf, personsName, recordId } from './field.ts';
import { z } from './zod.ts';

const stoveKinds = ['gas', 'coil', 'ceramic', 'induction'] as const satisfies StoveKind[];
const panMaterials = [
  'stainless',
  'enamel',
  'copper',
  'castIron',
  'aluminium',
  'unknownCoating',
] as const satisfies PanMaterial[];
const thermometerKinds = ['digital', 'dial'] as const satisfies ThermometerKind[];

const parameterNames = Object.keys(modelParameters(defaultKit)) as [ModelParameter, ...ModelParameter[]];
/** Further out than this many standard deviations nothing is learned. */
const scoreRange = [-20, 20] as const;

const measuredSchema = exactly({
  name: oneOf(parameterNames),
  low: numberIn([-1e9, 1e9]),
  mid: numberIn([-1e9, 1e9]),
  high: numberIn([-1e9, 1e9]),
}).refine(({ low, mid, high }) => low <= mid && mid <= high, {
  error: 'is not in order; allowed: low, mid and high, rising',
});

const lessonSchema = exactly({
  kind: oneOf(['cook', 'check']),
  name: personsName(80),
  at: z.iso
    .datetime({ precision: 3, error: 'is not a time; allowed: RFC 3339 in UTC with milliseconds' })
    .optional()
    .describe('When it was learned.'),
  measured: z
    .array(measuredSchema)
    .max(parameterNames.length)
    .readonly()
    .optional()
    .describe('What a check found by itself, with 10-90 % ranges.'),
  observations: z.int().min(1),
  misfit: numberIn([0, 1e6]),
});

const learnedSchema = exactly({
  names: z.array(oneOf(parameterNames)).min(1).max(parameterNames.length).readonly(),
  centre: z.array(numberIn(scoreRange)).readonly(),
  covariance: z.array(z.array(numberIn([-400, 400])).readonly()).readonly(),
  lessons: z.array(lessonSchema).min(1).max(10_000).readonly(),
})
  .refine(({ names, centre, covariance }) => isCovariance(covariance, names.length) && centre.length === names.length, {
    error: 'does not fit together; allowed: a centre and a row of a positive covariance for each name',
  })
  .describe('What cooks and checks have taught of the kit, in standard scores of the stated spreads.');

function isCovariance(rows: readonly (readonly number[])[], n: number): boolean {
  if (rows.length !== n || rows.some((row, i) => row.length !== n || row.some((value, j) => value !== rows[j]?.[i]))) {
    return false;
  }
  try {
    cholesky(rows.flat(), n);
    return true;
  } catch {
    return false;
  }
}

export const kitSchema = exactly({
  name: personsName(80),
  stove: exactly({
    kind: oneOf(stoveKinds),
    ratedPowerW: numberIn(ranges.ratedPowerW),
    notches: numberIn(ranges.notches),
  }),
  pan: exactly({
    material: oneOf(panMaterials),
    diameterM: numberIn(ranges.diameterM),
    heightM: numberIn(ranges.heightM),
    massKg: numberIn(ranges.panMassKg),
  }),
  thermometer: exactly({ kind: oneOf(thermometerKinds) }),
  spoonM3: numberIn(ranges.spoonM3),
  water: exactly({
    alkalinityMgPerL: numberIn(ranges.alkalinityMgPerL).describe('As CaCO3.'),
    hardnessMgPerL: numberIn(ranges.hardnessMgPerL).optional().describe('Calcium and magnesium as CaCO3, where known.'),
  }),
  altitudeM: numberIn(ranges.altitudeM),
  roomC: numberIn(ranges.roomC),
  prices: exactly(
    Object.fromEntries(pricedThings.map((thing) => [thing, numberIn(ranges.price).optional()])) as Record<
      PricedThing,
      z.ZodOptional<ReturnType<typeof numberIn>>
    >,
  )
    .optional()
    .describe('For each kg, and for each kWh, in any one currency.'),
  learned: learnedSchema.optional(),
}).meta({ id: 'Kit' });

/** `version` counts the kit's changes from 1; a change must name the version that it was made from. */
export const kitRecordSchema = z
  .object({
    id: recordId(),
    version: z.int().min(1),
    created: z.iso.datetime(),
    updated: z.iso.datetime(),
    kit: kitSchema,
  })
  .meta({ id: 'KitRecord' });

export type KitRecord = z.infer<typeof kitRecordSchema>;
