/** `/api/lots`: finished sugars, newest first. A change or a look carries the record's version as its entity tag. */
import { randomUUID } from 'node:crypto';
import type { FastifyInstance, FastifyReply } from 'fastify';
import type { ZodTypeProvider } from 'fastify-type-provider-zod';
import { countInText, recordId } from '../../api/field.ts';
import { type LotRecord, lotChangeSchema, lotRecordSchema, newLotSchema } from '../../api/lot.ts';
import { z } from '../../api/zod.ts';
import { Refusal } from '../problem.ts';
import { changeLot, createLot, findLot, listLots, shelveLot } from '../store/lots.ts';
import type { Store } from '../store/store.ts';
import { byId, problem, withKey } from './respond.ts';
import { versionOf, withVersion } from './version.ts';

const page = z.object({
  limit: countInText([1, 500]).default(100),
  before: recordId().optional().describe('The last lot of the page before.'),
});
const one = { 200: lotRecordSchema, default: problem };

export function lotRoutes(instance: FastifyInstance, { db }: Store) {
  const app = instance.withTypeProvider<ZodTypeProvider>();

  app.get(
    '/api/lots',
    {
      schema: {
        summary: 'Lots on the shelf, newest first',
        querystring: page,
        response: { 200: z.object({ lots: z.array(lotRecordSchema) }), default: problem },
      },
    },
    async ({ query }) => ({ lots: await listLots(db, query.limit, query.before) }),
  );

  app.get('/api/lots/:id', { schema: { summary: 'One lot', params: byId, response: one } }, async (request, reply) =>
    tagged(reply, (await findLot(db, request.params.id)) ?? noLot(request.params.id)),
  );

  app.post(
    '/api/lots',
    {
      schema: {
        summary: 'Make a lot',
        headers: withKey,
        body: newLotSchema,
        response: { ...one, 201: lotRecordSchema },
      },
    },
    async (request, reply) => {
      const id = request.headers['idempotency-key'] ?? randomUUID();
      const { outcome, record } = await createLot(db, id, request.body, new Date());
      if (outcome === 'taken')
        throw new Refusal('id-taken', `Lot ${id} exists and is not the one sent.`, { current: record });
      if (outcome === 'new') reply.code(201).header('location', `/api/lots/${id}`);
      return tagged(reply, record);
    },
  );

  app.put(
    '/api/lots/:id',
    {
      schema: {
        summary: 'Change the name, the weight or the alkali of a lot',
        params: byId,
        headers: withVersion,
        body: lotChangeSchema,
        response: one,
      },
    },
    async (request, reply) => {
      const { id } = request.params;
      const yourVersion = versionOf(request.headers['if-match']);
      const result = (await changeLot(db, id, yourVersion, request.body, new Date())) ?? noLot(id);
      if (result.changed) return tagged(reply, result.record);
      const detail = `You changed version ${yourVersion}; the lot is at version ${result.record.version} now.`;
      throw new Refusal('version-conflict', detail, { yourVersion, current: result.record });
    },
  );

  app.delete(
    '/api/lots/:id',
    {
      schema: {
        summary: 'Take a lot off the shelf; it can be put back',
        params: byId,
        response: { 204: z.null(), default: problem },
      },
    },
    async ({ params: { id } }, reply) => {
      if (!(await shelveLot(db, id, new Date()))) noLot(id);
      return reply.code(204).send(null);
    },
  );

  app.post(
    '/api/lots/:id/restore',
    { schema: { summary: 'Put a lot back on the shelf', params: byId, response: one } },
    async ({ params: { id } }, reply) => tagged(reply, (await shelveLot(db, id, null)) ?? noLot(id)),
  );
}

function tagged(reply: FastifyReply, record: LotRecord): LotRecord {
  reply.header('etag', `"${record.version}"`);
  return record;
}

export function noLot(id: string): never {
  throw new Refusal('not-found', `There is no lot ${id}.`);
}
