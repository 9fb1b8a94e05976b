/** The documents of `umberpan import --preview`, `check` and `learn` with `--json`. */
import { kitSchema } from '../../api/kit.ts';
import { z } from '../../api/zod.ts';
import { type KitchenNumber, kitchenNumbers, type Telling } from '../../core/learn/changes.ts';
import { faultKinds } from '../../core/learn/faults.ts';
import { keys, labelOf } from '../learn/words.ts';
import { amount, count, deedWith, eachOf, rangeSchema } from './figures.ts';

export const importPreview = z
  .strictObject({
    columns: z.array(z.string()),
    rows: count,
    readings: count,
    lowestC: amount.nullable().describe('Null where nothing was read.'),
    highestC: amount.nullable(),
    lastS: amount.describe('Time of the last row, from the first.'),
    wrong: z.tuple([]).describe('Empty: a table with a cell that says nothing is an error.'),
    deeds: z.array(z.strictObject({ timeS: amount, deed: deedWith({}) })),
  })
  .meta({ id: 'ImportPreview' });

const tellings = [...new Set<Telling>(Object.values(kitchenNumbers))];
const change = z.strictObject({
  before: rangeSchema,
  after: rangeSchema,
  narrowing: amount.describe('Spread after over spread before.'),
  toldBy: z.enum(tellings).nullable().describe('What would tell it, where it is still open.'),
});
const numbers = z.strictObject(
  Object.fromEntries(
    (Object.keys(keys) as KitchenNumber[]).map((name) => [keys[name], change.describe(labelOf(name))]),
  ),
);

const estimate = z
  .strictObject({ value: amount, sd: amount, low: amount, high: amount, wideLow: amount, wideHigh: amount })
  .meta({
    id: 'Estimate',
    description: 'With its standard uncertainty; low to high hold it 8 times in 10, wideLow to wideHigh 9 in 10.',
  });
const offC = amount.describe('Readings off the fit, root mean square.');
const told = z
  .strictObject({ names: z.array(z.string()), information: z.array(z.array(amount)), pull: z.array(amount) })
  .describe('What the readings alone say, in standard scores: information, and information times the best scores.');

const found = z.discriminatedUnion('kind', [
  z.strictObject({ kind: z.enum(['boilingWater', 'ice']), offsetC: estimate.describe('Shown above the truth.') }),
  z.strictObject({ kind: z.literal('lag'), lagS: estimate, offC }),
  z.strictObject({
    kind: z.literal('spoons'),
    meanKg: estimate,
    scatter: z
      .strictObject({ value: amount, low: amount, high: amount })
      .describe('Standard deviation of single spoonfuls, share of the mean.'),
    factor: estimate.describe('Times what the spoon should hold.'),
  }),
  z.strictObject({
    kind: z.literal('heating'),
    topW: estimate.describe('Heat that reaches the pan at the top setting.'),
    stoveEfficiency: estimate.describe('The same as a share of the rated power.'),
    stoveLagS: estimate,
    lossFactor: estimate.describe('Times the usual.'),
    panJPerK: estimate,
    left: eachOf(['stoveEfficiency', 'stoveLagS', 'lossFactor', 'panJPerK'], amount).describe(
      'Spread that is left, over that before; near 1 where the test did not tell it.',
    ),
    offC,
    told,
  }),
]);

export const checkDocument = z
  .strictObject({
    format: z.literal('umberpan-check-1'),
    found: found.describe('What the check says by itself.'),
    numbers,
    kit: kitSchema.describe('With what was learned.'),
  })
  .meta({ id: 'CheckDocument' });

const log = { file: z.string(), cook: z.string() };
const verdict = {
  misfit: amount.describe('Mean square of what the fit leaves, in the stated errors.'),
  mostMisfit: amount,
  readingsOffC: amount.describe('Readings off the fit, root mean square.'),
  shift: amount.describe('Squared distance from what was known, in standard deviations.'),
  shiftLimit: amount.describe('What one cook in a thousand exceeds.'),
};
const fault = z.strictObject({
  kind: z.enum(faultKinds),
  timeS: amount.nullable().describe('Null where it is about the whole log.'),
  values: z.array(amount).describe('Readings about it, °C.'),
  message: z.string(),
});

export const learnDocument = z
  .strictObject({
    format: z.literal('umberpan-learn-1'),
    logs: z
      .array(
        z.discriminatedUnion('outcome', [
          z.strictObject({ ...log, outcome: z.literal('learned'), accepted: z.literal(true), ...verdict }),
          z.strictObject({ ...log, outcome: z.literal('refused'), accepted: z.literal(false), ...verdict }),
          z.strictObject({ ...log, outcome: z.literal('unfit'), faults: z.array(fault) }),
        ]),
      )
      .describe('In the order in which they were given.'),
    numbers: z.union([numbers, z.strictObject({})]).describe('Empty where nothing was learned.'),
    kit: kitSchema.describe('With what was learned.'),
  })
  .meta({ id: 'LearnDocument' });
