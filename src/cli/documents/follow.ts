/** The lines of `umberpan follow`, a document each. */
import { z } from '../../api/zod.ts';
import type { Advice, Urgency } from '../../core/advice/advise.ts';
import { amount, count, rangeSchema } from './figures.ts';

const kinds = [
  'steer',
  'wait',
  'alkali',
  'cool first',
  'next step',
  'pour',
  'off the heat',
] as const satisfies Advice['kind'][];
const urgencies = ['act now', 'act soon', 'next', 'go on'] as const satisfies Urgency[];

const advice = z
  .strictObject({
    kind: z.enum(kinds),
    deeds: z.array(z.string()).describe('What to do, in words; none to go on.'),
    urgency: z.enum(urgencies),
    expected_Cel: rangeSchema.describe('At the end of the outlook, within 3 minutes.'),
    leavesBand: amount.describe('Chance that the band is left within a minute if nothing is done.'),
    minutesLeft: amount.nullable().describe('Still to hold; null in a step that is no hold.'),
  })
  .meta({ id: 'FollowAdvice' });

const line = count.describe('Number of the line in.');

const believed = {
  line,
  t: amount.describe('Newest time that was told, s.'),
  temperature_Cel: rangeSchema,
  'water_%': rangeSchema,
  'inverted_%': rangeSchema,
  pH: rangeSchema.describe('Hot.'),
  a430: rangeSchema.describe('Absorbance at 430 nm per cm of a 10 % w/w solution.'),
  ebc: rangeSchema.describe('Of the same.'),
};
const standing = {
  step: z.string().describe('Under way.'),
  held_min: amount.describe('Minutes held that count, at the middle of the band.'),
  advice: advice.nullable().describe('Null after the pour.'),
};

export const observedLine = z
  .strictObject({
    ...believed,
    surprise: amount.describe('Observed less expected, in standard deviations.'),
    used: z.boolean().describe('False where it was held back.'),
    ...standing,
  })
  .meta({ id: 'FollowObserved' });

export const doneLine = z
  .strictObject({ ...believed, surprise: z.null(), used: z.null(), ...standing })
  .meta({ id: 'FollowDone' });

export const badLine = z
  .strictObject({
    error: z.strictObject({
      line,
      field: z.string(),
      value: z.string(),
      allowed: z.string(),
      message: z.string(),
    }),
  })
  .meta({ id: 'FollowBadLine', description: 'On standard error; the lines after it go on.' });
