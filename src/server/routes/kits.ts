/** `/api/kits`: the kitchens. A change or a look carries the record's version as its entity tag. */
import { randomUUID } from 'node:crypto';
import type { FastifyInstance, FastifyReply } from 'fastify';
import type { ZodTypeProvider } from 'fastify-type-provider-zod';
import type { KitRecord } from '../../api/kit.ts';
import { kitRecordSchema, kitSchema } from '../../api/kit.ts';
import { z } from '../../api/zod.ts';
import { Refusal } from '../problem.ts';
import { createKit, findKit, listKits, removeKit, replaceKit } from '../store/kits.ts';
import type { Store } from '../store/store.ts';
import { byId, problem, withKey } from './respond.ts';
import { versionOf, withVersion } from './version.ts';

const one = { 200: kitRecordSchema, default: problem };

export function kitRoutes(instance: FastifyInstance, { db }: Store) {
  const app = instance.withTypeProvider<ZodTypeProvider>();

  app.get(
    '/api/kits',
    { schema: { summary: 'All kits, by name', response: { 200: z.object({ kits: z.array(kitRecordSchema) }) } } },
    async () => ({ kits: await listKits(db) }),
  );

  app.get('/api/kits/:id', { schema: { summary: 'One kit', params: byId, response: one } }, async (request, reply) =>
    tagged(reply, (await findKit(db, request.params.id)) ?? missing(request.params.id)),
  );

  app.post(
    '/api/kits',
    {
      schema: {
        summary: 'Make a kit',
        headers: withKey,
        body: kitSchema,
        response: { ...one, 201: kitRecordSchema },
      },
    },
    async (request, reply) => {
      const id = request.headers['idempotency-key'] ?? randomUUID();
      const { outcome, record } = await createKit(db, id, request.body, new Date());
      if (outcome === 'taken')
        throw new Refusal('id-taken', `Kit ${id} exists and is not the one sent.`, { current: record });
      if (outcome === 'new') reply.code(201).header('location', `/api/kits/${id}`);
      return tagged(reply, record);
    },
  );

  app.put(
    '/api/kits/:id',
    { schema: { summary: 'Change a kit', params: byId, headers: withVersion, body: kitSchema, response: one } },
    async (request, reply) => {
      const { id } = request.params;
      const yourVersion = versionOf(request.headers['if-match']);
      const result = (await replaceKit(db, id, yourVersion, request.body, new Date())) ?? missing(id);
      if (result.replaced) return tagged(reply, result.record);
      const detail = `You changed version ${yourVersion}; the kit is at version ${result.record.version} now.`;
      throw new Refusal('version-conflict', detail, { yourVersion, current: result.record });
    },
  );

  app.delete(
    '/api/kits/:id',
    {
      schema: { summary: 'Remove a kit; its plans stay', params: byId, response: { 204: z.null(), default: problem } },
    },
    async (request, reply) => {
      if (!(await removeKit(db, request.params.id))) missing(request.params.id);
      return reply.code(204).send(null);
    },
  );
}

function tagged(reply: FastifyReply, record: KitRecord): KitRecord {
  reply.header('etag', `"${record.version}"`);
  return record;
}

function missing(id: string): never {
  throw new Refusal('not-found', `There is no kit ${id}.`);
}
