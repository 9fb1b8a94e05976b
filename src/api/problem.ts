/** Everything that the API can refuse with or fail with, as problem documents (RFC 9457). */
import { fieldErrorSchema } from './fieldError.ts';
import { glassRecordSchema } from './glass.ts';
import { kitRecordSchema } from './kit.ts';
import { lotRecordSchema } from './lot.ts';
import { tastingRecordSchema } from './tasting.ts';
import { z } from './zod.ts';

/** Kind, HTTP status and title of each problem; `GET /api/problems` serves this list. */
export const problemKinds = {
  'bad-request': { status: 400, title: 'The request could not be read' },
  'invalid-input': { status: 400, title: 'Some fields are not as allowed' },
  'not-paired': { status: 401, title: 'This device is not paired' },
  'not-allowed': { status: 403, title: 'This device may look on, but not do that' },
  'not-shared': { status: 403, title: 'This was not shared with this device' },
  'code-refused': { status: 403, title: 'This code does not count' },
  'origin-refused': { status: 403, title: 'This page may not write here' },
  'not-found': { status: 404, title: 'There is nothing at this address' },
  'too-slow': { status: 408, title: 'The request took too long to come' },
  'id-taken': { status: 409, title: 'This id already belongs to another record' },
  asleep: { status: 409, title: 'This thermometer is let in for no cook now' },
  'which-cook': { status: 409, title: 'It is not clear which cook is meant' },
  'things-kept': { status: 409, title: 'Other things are kept here' },
  'cook-under-way': { status: 409, title: 'A cook is under way' },
  'version-conflict': { status: 412, title: 'The record was changed in the meantime' },
  'too-large': { status: 413, title: 'The request is too large' },
  'address-too-long': { status: 414, title: 'The address is too long' },
  'media-type': { status: 415, title: 'This kind of content is not taken here' },
  'host-refused': { status: 421, title: 'This server does not answer to that name' },
  unsafe: { status: 422, title: 'The plan would break a limit of safety' },
  'event-differs': { status: 422, title: 'An event with this id exists and says something else' },
  'version-missing': { status: 428, title: 'A change must name the version that it was made from' },
  'too-many-tries': { status: 429, title: 'Too many codes were tried' },
  'too-many-writes': { status: 429, title: 'Too much is written at a time' },
  'too-many-streams': { status: 429, title: 'Too many streams are open' },
  'headers-too-large': { status: 431, title: 'The head of the request is too large' },
  failed: { status: 500, title: 'Something failed on the server' },
  'store-failed': { status: 503, title: 'The store could not be written or read' },
} as const;

export type ProblemKind = keyof typeof problemKinds;

export const problemSchema = z
  .object({
    type: z.string().describe('`/api/problems#` and the kind.'),
    title: z.string(),
    status: z.int(),
    detail: z.string(),
    instance: z.string().describe("Names this one occurrence, also in the server's log."),
    errors: z.array(fieldErrorSchema).optional().describe('One entry for each field that is not as allowed.'),
    yourVersion: z.int().optional().describe('The version that a refused change was made from.'),
    current: z
      .union([kitRecordSchema, lotRecordSchema, glassRecordSchema, tastingRecordSchema])
      .optional()
      .describe('The record as it is now.'),
  })
  .meta({ id: 'Problem' });

export type Problem = z.infer<typeof problemSchema>;
