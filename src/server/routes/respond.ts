/** Pieces that the routes' descriptions share. */
import { recordId } from '../../api/field.ts';
import { problemSchema } from '../../api/problem.ts';
import { z } from '../../api/zod.ts';

/** Any refusal, as a route's response schema. */
export const problem = {
  description: 'Refused or failed',
  content: { 'application/problem+json': { schema: problemSchema } },
};

export const byId = z.object({ id: recordId() });

/** A client that may have to repeat a request names the new record itself: the key becomes the record's id. */
export const withKey = z.object({
  'idempotency-key': recordId()
    .optional()
    .describe("Becomes the new record's id; a repeated request makes no second record."),
});
