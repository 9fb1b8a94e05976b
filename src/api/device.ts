/** Devices that were let in, what each may do, and how another one is let in. */
import { exactly, numberIn, oneOf, personsName, recordId } from './field.ts';
import { refusal } from './refusalWords.ts';
import { z } from './zod.ts';

/** Keeper: everything. Cook: cooks and keeps records. Reader: looks on. Probe: sends readings, sees nothing. */
export const deviceRoles = ['keeper', 'cook', 'reader', 'probe'] as const;
export type DeviceRole = (typeof deviceRoles)[number];

const moment = z.iso.datetime({ precision: 3 });

/** The one cook that a device is let in for: its id, or the next one that goes on. */
const boundTo = z
  .union([recordId(), z.literal('next')], { error: refusal('the id of a cook, next, or null') })
  .nullable();
const boundWords =
  'Of a probe: the one cook that it sends to; next: the one that goes on when it sends; null: none, it is asleep. ' +
  'Of a reader: the one cook that it sees; null: all of them. Of others null.';

export const deviceSchema = z
  .object({
    id: z.uuid(),
    name: z.string(),
    role: z.enum(deviceRoles),
    paired: moment,
    lastSeen: moment.describe('To the minute.'),
    expires: moment.nullable().describe('When it is let out again by itself; null for never.'),
    cook: boundTo.describe(boundWords),
    words: z.string().describe('Four words that the device shows too: the same device, if they are the same.'),
  })
  .meta({ id: 'Device' });
export type Device = z.infer<typeof deviceSchema>;

/** A week at most; a device that stays is paired without an end. */
export const invitationSchema = exactly({
  role: oneOf(deviceRoles),
  hours: numberIn([1, 168]).nullable().default(null).describe('How long the device is let in; null for good.'),
  cook: boundTo.optional().describe(`${boundWords} Left out: next for a probe, null for others.`),
}).superRefine(({ role, cook }, context) => refuseMisbound(role, cook ?? null, context));
export type Invitation = z.infer<typeof invitationSchema>;

/** What a device that is let in is bound to from now on. */
export const bindingSchema = exactly({ cook: boundTo.describe(boundWords) });

/** What of a binding does not fit the role; undefined when it does. */
export function misbound(role: DeviceRole, cook: string | null): string | undefined {
  if (cook === null || role === 'probe' || (role === 'reader' && cook !== 'next')) return undefined;
  return role === 'reader' ? 'has to be the id of a cook, or null for all of them' : `has to be null for a ${role}`;
}

function refuseMisbound(role: DeviceRole, cook: string | null, context: z.RefinementCtx) {
  const message = misbound(role, cook);
  if (message) context.addIssue({ code: 'custom', path: ['cook'], message });
}

export const invitedSchema = z
  .object({
    code: z.string(),
    role: z.enum(deviceRoles),
    ends: moment.describe('The code counts until then, and once.'),
    links: z
      .array(z.string())
      .describe('Where a device on the network opens it; none while only this machine is served.'),
  })
  .meta({ id: 'Invited' });
export type Invited = z.infer<typeof invitedSchema>;

/** The alphabet of the codes leaves out what is easily mistaken (Crockford's base 32); small letters and blanks do no harm. */
const codeRefused = refusal('the 8 letters and digits of a code');
export const pairingSchema = exactly({
  code: z
    .string({ error: codeRefused })
    .max(40, { error: codeRefused })
    .transform((code) => code.toUpperCase().replaceAll(/[\s-]/g, '').replaceAll('O', '0').replaceAll(/[IL]/g, '1'))
    .pipe(z.string().regex(/^[0-9A-HJKMNP-TV-Z]{8}$/, { error: codeRefused })),
  name: personsName(40).describe('What the device is called in the list.'),
});

export const pairedSchema = z
  .object({
    token: z.string().describe('Sent with every request as `Authorization: Bearer`; told this once.'),
    device: deviceSchema,
  })
  .meta({ id: 'Paired' });
export type Paired = z.infer<typeof pairedSchema>;

const standings = ['host', 'paired', 'unpaired'] as const;
export const standingSchema = z
  .object({
    standing: z.enum(standings).describe('host: on the machine that serves.'),
    device: deviceSchema.nullable(),
  })
  .meta({ id: 'Standing' });
export type Standing = z.infer<typeof standingSchema>;
