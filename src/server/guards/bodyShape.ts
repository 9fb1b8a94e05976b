/** Refuses documents that are small on the wire and endless to walk: nested deeper or with more fields than anything kept here. */
import { Readable } from 'node:stream';
import type { FastifyInstance } from 'fastify';
import { Refusal } from '../problem.ts';

const deepest = 32;
/** A batch of 500 events has some 12,000 fields. */
const mostFields = 20_000;
const longestText = 100_000;

export function guardBodyShape(app: FastifyInstance) {
  app.addHook('preValidation', async ({ body }) => {
    // What comes as a stream is no document yet: who reads it judges it.
    const isDocument = typeof body === 'object' && body !== null && !(body instanceof Readable);
    const fault = isDocument ? faultOf(body) : undefined;
    if (fault !== undefined) throw new Refusal('too-large', fault);
  });
}

/** Level by level and not by recursion, which a deep document would end. */
function faultOf(body: object): string | undefined {
  let fields = 0;
  let level: unknown[] = [body];
  for (let depth = 0; level.length > 0; depth++) {
    if (depth > deepest) return `The body is nested deeper than ${deepest} levels.`;
    const next: unknown[] = [];
    for (const value of level) {
      if (typeof value === 'string' && value.length > longestText)
        return `A text in the body is longer than ${longestText} characters.`;
      if (typeof value !== 'object' || value === null) continue;
      const inside = Object.values(value);
      fields += inside.length;
      if (fields > mostFields) return `The body has more than ${mostFields} fields.`;
      next.push(...inside);
    }
    level = next;
  }
  return undefined;
}
