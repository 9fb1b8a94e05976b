/** The documents of `umberpan restore`, `trust` and `doctor` with `--json`. */
import { z } from '../../api/zod.ts';
import { count } from './figures.ts';

export const restored = z
  .strictObject({ kind: z.literal('restored'), rows: count.describe('Records that were taken in.') })
  .meta({ id: 'Restored' });

export const restoredBefore = z.strictObject({ kind: z.literal('same') }).meta({ id: 'RestoredBefore' });

export const trustDocument = z
  .strictObject({
    file: z.string().describe('Of the certificate.'),
    fingerprint: z.string().describe('SHA-256 of the certificate, in pairs of hexadecimal digits.'),
    ends: z.iso.datetime().describe('How long it counts, in UTC.'),
    names: z
      .array(z.string())
      .nullable()
      .describe('Endings of the names that it may vouch for, beside private addresses; null: any.'),
  })
  .meta({ id: 'TrustDocument' });

export const trustRemoved = z
  .strictObject({ removed: z.boolean().describe('false: there was none.') })
  .meta({ id: 'TrustRemoved' });

export const doctorDocument = z
  .strictObject({
    findings: z.array(
      z.strictObject({
        name: z.string(),
        state: z
          .enum(['well', 'mind', 'wrong'])
          .describe('mind: works, but not as well as it might. wrong: does not work, or something may be lost.'),
        found: z.string(),
        advice: z.string().optional().describe('What to do; left out where all is well.'),
      }),
    ),
  })
  .meta({ id: 'DoctorDocument' });
