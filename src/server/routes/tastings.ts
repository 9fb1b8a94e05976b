/** `/api/glasses/:id/tastings`: how a beer tasted, some day. */
import { randomUUID } from 'node:crypto';
import type { FastifyInstance } from 'fastify';
import type { ZodTypeProvider } from 'fastify-type-provider-zod';
import { recordId } from '../../api/field.ts';
import { newTastingSchema, tastingRecordSchema } from '../../api/tasting.ts';
import { z } from '../../api/zod.ts';
import { Refusal } from '../problem.ts';
import { findGlass } from '../store/glasses.ts';
import type { Store } from '../store/store.ts';
import { createTasting, listTastings, removeTasting } from '../store/tastings.ts';
import { noGlass } from './glasses.ts';
import { byId, problem, withKey } from './respond.ts';

export function tastingRoutes(instance: FastifyInstance, { db }: Store) {
  const app = instance.withTypeProvider<ZodTypeProvider>();

  app.get(
    '/api/glasses/:id/tastings',
    {
      schema: {
        summary: 'Tastings of a glass, the latest first',
        params: byId,
        response: { 200: z.object({ tastings: z.array(tastingRecordSchema) }), default: problem },
      },
    },
    async ({ params: { id } }) => {
      if (!(await findGlass(db, id))) noGlass(id);
      return { tastings: await listTastings(db, id) };
    },
  );

  app.post(
    '/api/glasses/:id/tastings',
    {
      schema: {
        summary: 'Keep a tasting',
        params: byId,
        headers: withKey,
        body: newTastingSchema,
        response: { 200: tastingRecordSchema, 201: tastingRecordSchema, default: problem },
      },
    },
    async (request, reply) => {
      const glassId = request.params.id;
      if (!(await findGlass(db, glassId))) noGlass(glassId);
      const id = request.headers['idempotency-key'] ?? randomUUID();
      const { outcome, record } = await createTasting(db, { id, glassId, tasting: request.body }, new Date());
      if (outcome === 'taken')
        throw new Refusal('id-taken', `Tasting ${id} exists and is not the one sent.`, { current: record });
      if (outcome === 'new') reply.code(201);
      return record;
    },
  );

  app.delete(
    '/api/glasses/:id/tastings/:tastingId',
    {
      schema: {
        summary: 'Take a tasting away',
        params: byId.extend({ tastingId: recordId() }),
        response: { 204: z.null(), default: problem },
      },
    },
    async ({ params: { id, tastingId } }, reply) => {
      if (!(await removeTasting(db, id, tastingId)))
        throw new Refusal('not-found', `There is no tasting ${tastingId} of glass ${id}.`);
      return reply.code(204).send(null);
    },
  );
}
