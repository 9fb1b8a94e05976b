/** The document of `umberpan simulate --json`; names carry their UCUM units. */
import { kitSchema } from '../../api/kit.ts';
import { planRequestSchema } from '../../api/planRequest.ts';
import { z } from '../../api/zod.ts';
import { amount, count, rangeSchema } from './figures.ts';

const step = z.strictObject({
  kind: z.string(),
  takes_min: rangeSchema,
  ends_min: rangeSchema,
  reading_Cel: rangeSchema,
  spoonfuls: rangeSchema,
  'water_%': rangeSchema,
  'ph_[pH]': rangeSchema,
  'inverted_%': rangeSchema,
  'colour_{EBC}': rangeSchema,
  drop_srgb: z.tuple([amount, amount, amount]),
});

const traces = ['reading_*Cel', 'water_*%', 'ph_*[pH]', 'inverted_*%', 'colour_*{EBC}'];
const edge = amount.nullable().describe('Null once most of the drawn cooks are poured.');
const row = z.strictObject({
  time_s: amount,
  step: z.string(),
  syrup_Cel: amount,
  boils_Cel: amount,
  'steam_g/min': amount,
  ...Object.fromEntries(
    traces.flatMap((name) => [
      [name.replace('*', ''), amount],
      [name.replace('*', 'low_'), edge],
      [name.replace('*', 'high_'), edge],
    ]),
  ),
});

export const simulationDocument = z
  .strictObject({
    format: z.literal('umberpan-simulation-1'),
    request: planRequestSchema,
    kit: kitSchema,
    draws: count,
    seed: count,
    ending: z.string(),
    hottest_Cel: amount,
    yield_kg: rangeSchema,
    steps: z.array(step),
    course: z.array(row),
  })
  .meta({ id: 'SimulationDocument' });
