/** What the routes that take events in have in common. */

import { recordId } from '../../api/field.ts';
import { z } from '../../api/zod.ts';
import { Refusal } from '../problem.ts';
import type { Appended } from '../store/events.ts';

/** An event names itself, so a repeated request is known by its body; the header may say so too. */
export const withEventKey = z.object({
  'idempotency-key': recordId()
    .optional()
    .describe("The event's own id. A repeated request gets the first answer again."),
});

export function refuseOtherKey(key: string | undefined, id: string) {
  if (key === undefined || key === id) return;
  const message = `idempotency-key is "${key}"; allowed: the event's own id, "${id}"`;
  throw new Refusal('invalid-input', message, { errors: [{ field: 'idempotency-key', message }] });
}

export function receiptsOf(appended: Extract<Appended, { outcome: 'stored' }>) {
  return appended.stored.map(({ id, seq, tServer, hash }) => ({ id, seq, tServer, hash }));
}
