/** The document of `umberpan plan --json`. */
import { kitSchema } from '../../api/kit.ts';
import { planRequestSchema } from '../../api/planRequest.ts';
import { z } from '../../api/zod.ts';
import { alkaliPartSchema, amount, count, madeSchema, rangeSchema } from './figures.ts';

const amounts = z.strictObject({
  charge: z.strictObject({ sucroseKg: amount, waterKg: amount, maltExtractKg: amount, citricAcidKg: amount }),
  alkali: z
    .strictObject({
      substance: z.string(),
      weighedKg: amount,
      pureKg: amount,
      waterKg: amount,
      strength: amount,
      parts: z.array(alkaliPartSchema),
      equivalents: amount,
    })
    .optional()
    .describe('Not of the pale route.'),
});

const fit = z.strictObject({
  depthM: amount,
  foamM: amount,
  fill: amount.describe("Share of the pan's height that the quiet syrup fills."),
  foamStaysIn: z.boolean(),
  probeCovered: z.boolean(),
  mostSugarKg: amount,
});

const stepSchema = z
  .strictObject({
    kind: z.string(),
    bandC: z.tuple([amount, amount]),
    end: z.union([z.strictObject({ reachedC: amount }), z.strictObject({ heldMinutes: amount })]),
    approachNotch: amount,
    holdNotch: amount,
    alkali: z.array(alkaliPartSchema),
    waitS: amount,
    letDown: z.strictObject({ solids: amount, hotPortionKg: amount, coolPortionKg: amount }).optional(),
  })
  .meta({ id: 'Step' });

const hardness = z.strictObject({
  mgPerL: amount,
  calciumGPerKg: amount,
  bindsAtMost: amount.describe('Share of the alkali, before the acid of the syrup frees it.'),
  boilsOutMgPerL: amount.describe('Alkalinity that leaves with the chalk of boiled water, at most.'),
});

const account = z.strictObject({
  sodiumGPerKg: amount,
  calciumGPerKg: amount,
  minutes: amount,
  energyKWh: amount,
  lostKg: amount,
  steamKg: amount,
  water: z.strictObject({ equivalents: amount, asNaohG: amount, hardness: hardness.optional() }),
  distilled: z.strictObject({ colourFactor: amount, invertedMore: amount }),
  bathKg: amount.optional(),
  tray: z.strictObject({ areaM2: amount, thicknessM: amount }).optional(),
  letDownKg: amount.optional(),
  neutraliser: z.strictObject({ naohKg: amount, caoh2Kg: amount, equivalents: amount }).optional(),
  cost: z
    .strictObject({ batch: amount, perKg: amount, saved: amount.optional(), unpriced: z.array(z.string()) })
    .optional(),
});

const aim = z.strictObject({
  a430: amount,
  ebc: amount,
  band: z.tuple([amount, amount]),
  offBy: amount,
  hueLeft: amount,
  short: z.string().nullable().describe('Why the colour is not reached.'),
  odds: z.strictObject({
    draws: count,
    a430: rangeSchema,
    justVisible: amount.describe('Share of the draws within a just visible difference of the aim.'),
    band: amount.describe('Share within the band asked for.'),
  }),
});

const ended = z.strictObject({
  kind: z.string(),
  readingC: amount,
  waterShare: amount,
  ph: amount,
  inverted: amount,
  minutes: amount,
  endMinute: amount,
  spoonfuls: amount,
  a430: amount,
  ebc: amount,
});

const statement = z
  .strictObject({
    id: z.string(),
    text: z.string(),
    source: z.string(),
    date: z.string().describe('When it was written down here, as 2026-11-25.'),
    region: z.string().describe('Where it holds: a country, `EU`, or `any`.'),
  })
  .meta({ id: 'Statement' });

const caution = statement.extend({ field: z.string().optional().describe('Of the request, where it is about one.') });

export const planDocument = z
  .strictObject({
    format: z.literal('umberpan-plan-1'),
    request: planRequestSchema,
    kit: kitSchema,
    amounts,
    alkaliHazard: z.string().optional(),
    fit,
    steps: z.array(stepSchema),
    yieldKg: amount,
    aim: aim.optional().describe('Where the plan was made for a colour.'),
    made: madeSchema.optional(),
    account,
    expected: z.array(ended).describe('How each step ends by the central values.'),
    checks: z.array(statement).describe('What must be ready before the heat is on.'),
    cautions: z.array(caution),
  })
  .meta({ id: 'PlanDocument' });
