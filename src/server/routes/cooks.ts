/** `/api/cooks`: cooks, begun by their first event, and what their logs come to. */
import type { FastifyInstance } from 'fastify';
import type { ZodTypeProvider } from 'fastify-type-provider-zod';
import { cookRecordSchema, cookSnapshotSchema } from '../../api/cook.ts';
import { begunEventSchema, receiptSchema } from '../../api/event.ts';
import { countInText, recordId } from '../../api/field.ts';
import { z } from '../../api/zod.ts';
import type { Logbook } from '../cooking/logbook.ts';
import { snapshotOf } from '../cooking/snapshot.ts';
import { Refusal } from '../problem.ts';
import { listCooks } from '../store/cooks.ts';
import type { Store } from '../store/store.ts';
import { receiptsOf, refuseOtherKey, withEventKey } from './eventAnswers.ts';
import { byId, problem } from './respond.ts';

const page = z.object({
  limit: countInText([1, 500]).default(100),
  before: recordId().optional().describe('The last cook of the page before.'),
});

export function cookRoutes(instance: FastifyInstance, { db }: Store, logbook: Logbook) {
  const app = instance.withTypeProvider<ZodTypeProvider>();

  app.get(
    '/api/cooks',
    {
      schema: {
        summary: 'Cooks, newest first',
        querystring: page,
        response: { 200: z.object({ cooks: z.array(cookRecordSchema) }), default: problem },
      },
    },
    async ({ query }) => ({ cooks: await listCooks(db, query.limit, query.before) }),
  );

  app.post(
    '/api/cooks',
    {
      schema: {
        summary: 'Begin a cook with its first event',
        headers: withEventKey,
        body: begunEventSchema,
        response: { 201: receiptSchema, default: problem },
      },
    },
    async (request, reply) => {
      const begun = request.body;
      refuseOtherKey(request.headers['idempotency-key'], begun.id);
      const appended = await logbook.begin(begun);
      if (appended.outcome === 'differs') {
        throw new Refusal(
          'id-taken',
          `Cook ${begun.cook} began with another event, or event ${begun.id} is another one.`,
        );
      }
      reply.code(201).header('location', `/api/cooks/${begun.cook}`);
      return receiptsOf(appended)[0];
    },
  );

  app.get(
    '/api/cooks/:id',
    {
      schema: {
        summary: 'Where a cook stands: the fold of its events',
        params: byId,
        response: { 200: cookSnapshotSchema, default: problem },
      },
    },
    async ({ params: { id } }) => (await snapshotOf(db, id, logbook.now())) ?? noCook(id),
  );
}

export function noCook(id: string): never {
  throw new Refusal('not-found', `There is no cook ${id}.`);
}
