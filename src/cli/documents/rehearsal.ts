/** The document of `umberpan rehearse --json`; names carry their UCUM units. */
import { kitSchema } from '../../api/kit.ts';
import { planRequestSchema } from '../../api/planRequest.ts';
import { z } from '../../api/zod.ts';
import { alarmIds } from '../../core/advice/alarms/catalogue.ts';
import { surpriseNames } from '../../core/advice/surpriseKinds.ts';
import { kitchenShown } from '../cook/kitchenShown.ts';
import { amount, count, deedWith, eachOf, rangeSchema } from './figures.ts';

const revealed = z.strictObject({
  hidden: amount,
  believed: rangeSchema,
  inside: z.boolean().describe('Whether what was hidden lies from low to high.'),
});

const kitchenNames = Object.values(kitchenShown).map(({ key }) => key);

const surprise = z.strictObject({
  name: z.enum(surpriseNames),
  alarm: z.enum(alarmIds).describe('Which should say so.'),
  t: amount.describe('When it began, since the cook began, s.'),
  said_t: amount.nullable().describe('When the alarm sounded; null where it did not.'),
  right_t: amount.nullable().describe('When the thermometer was right again; null where it stayed so.'),
});

export const rehearsalDocument = z
  .strictObject({
    format: z.literal('umberpan-rehearsal-1'),
    mode: z.literal('rehearsal'),
    request: planRequestSchema,
    kit: kitSchema,
    seed: count,
    members: count,
    ending: z.enum(['poured', 'left', 'out of time']),
    takes_s: amount,
    'in_band_%': amount.nullable().describe('Share of the readings in holds; null where no hold was reached.'),
    spoonfuls: amount,
    turns: count.describe('Of the dial.'),
    deeds: z.array(deedWith({ t: amount.describe('Since the cook began, s.') })),
    pan: eachOf(['temperature_Cel', 'water_%', 'inverted_%', 'ph_[pH]', 'colour_{EBC}'], revealed).describe(
      'At the end, hidden and believed.',
    ),
    kitchen: eachOf(kitchenNames, revealed.extend({ before: rangeSchema })).describe(
      'The same, with what was held likely before the cook.',
    ),
    surprises: z.array(surprise).nullable().describe('Faults of the thermometer; null where it was rehearsed without.'),
  })
  .meta({ id: 'RehearsalDocument' });
