/** `/api/cooks/:id/events`: the log of a cook. */
import type { FastifyInstance } from 'fastify';
import type { ZodTypeProvider } from 'fastify-type-provider-zod';
import { eventBatchSchema, eventSchema, receiptSchema, stampedEventSchema } from '../../api/event.ts';
import { countInText, placeRange } from '../../api/field.ts';
import { z } from '../../api/zod.ts';
import type { LogEvent } from '../../core/log/event.ts';
import type { Logbook } from '../cooking/logbook.ts';
import { Refusal } from '../problem.ts';
import { findCook } from '../store/cooks.ts';
import { readEvents } from '../store/events.ts';
import type { Store } from '../store/store.ts';
import { noCook } from './cooks.ts';
import { receiptsOf, refuseOtherKey, withEventKey } from './eventAnswers.ts';
import { byId, problem } from './respond.ts';

/** 500 readings with room to spare. */
const bodyLimit = 1024 * 1024;
const mostRead = 10_000;
const ndjson = 'application/x-ndjson';

const incoming = z.union([eventSchema, eventBatchSchema]);
const range = z.object({
  since: countInText(placeRange).default(0).describe('Place of the last event that you have.'),
  limit: countInText([1, mostRead])
    .default(mostRead)
    .describe('How many at once; the less, the sooner they are there.'),
});
const answer = z.object({
  events: z.array(stampedEventSchema),
  lastSeq: z.int().describe('What to ask for next.'),
  more: z.boolean().describe('Whether there are further events now.'),
});

export function cookEventRoutes(instance: FastifyInstance, { db }: Store, logbook: Logbook) {
  const app = instance.withTypeProvider<ZodTypeProvider>();

  app.post(
    '/api/cooks/:id/events',
    {
      bodyLimit,
      schema: {
        summary: 'Add an event, or up to 500 of which all go in or none',
        params: byId,
        headers: withEventKey,
        body: incoming,
        response: { 201: z.union([receiptSchema, z.array(receiptSchema)]), default: problem },
      },
      // By shape, so that what is refused is named event by event and not as a choice of two.
      validatorCompiler:
        ({ schema, httpPart }) =>
        (data) => {
          const body = Array.isArray(data) ? eventBatchSchema : eventSchema;
          const { data: value, error } = (httpPart === 'body' ? body : (schema as unknown as z.ZodType)).safeParse(
            data,
          );
          return error ? { error } : { value };
        },
    },
    async (request, reply) => {
      const { id } = request.params;
      const batch = Array.isArray(request.body);
      const events: readonly LogEvent[] = Array.isArray(request.body) ? request.body : [request.body];
      if (!batch) refuseOtherKey(request.headers['idempotency-key'], events[0].id);
      if (!(await findCook(db, id))) noCook(id);
      refuseMisplaced(id, events, batch);
      const appended = await logbook.append(id, events);
      if (appended.outcome === 'differs') {
        const { id: taken } = events[appended.place];
        throw new Refusal('event-differs', `Event ${taken} exists and is not the one sent. Nothing was written.`);
      }
      const receipts = receiptsOf(appended);
      reply.code(201);
      return batch ? receipts : receipts[0];
    },
  );

  app.get(
    '/api/cooks/:id/events',
    {
      schema: {
        summary: `Events in the order in which they came in: up to ${mostRead} at a time, or all as ${ndjson}`,
        params: byId,
        querystring: range,
        response: {
          200: {
            description: 'The events',
            content: { 'application/json': { schema: answer }, [ndjson]: { schema: z.string() } },
          },
          default: problem,
        },
      },
    },
    async (request, reply) => {
      const { id } = request.params;
      const { since, limit } = request.query;
      if (!(await findCook(db, id))) noCook(id);
      if (request.headers.accept?.includes(ndjson)) {
        const { events } = await readEvents(db, id, since);
        return reply.type(ndjson).send(events.map((event) => `${JSON.stringify(event)}\n`).join(''));
      }
      const { events, damaged } = await readEvents(db, id, since, limit);
      return reply.send({
        events: events.map((event) => ({ ...event })),
        lastSeq: Math.max(since, events.at(-1)?.seq ?? 0, damaged.at(-1) ?? 0),
        more: events.length + damaged.length >= limit,
      });
    },
  );
}

/** Events of another cook, and beginnings. */
function refuseMisplaced(cook: string, events: readonly LogEvent[], batch: boolean) {
  const errors = events.flatMap((event, place) => {
    const at = batch ? `${place}.` : '';
    if (event.kind === 'begun') {
      return [{ field: `${at}kind`, message: `${at}kind is "begun"; a cook begins once, by POST /api/cooks` }];
    }
    if (event.cook === cook) return [];
    return [{ field: `${at}cook`, message: `${at}cook is "${event.cook}"; allowed here: "${cook}"` }];
  });
  if (errors.length > 0) throw new Refusal('invalid-input', errors[0].message, { errors });
}
