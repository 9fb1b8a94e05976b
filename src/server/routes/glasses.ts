/** `/api/glasses`: beers with their sugars, newest first. A change or a look carries the record's version as its entity tag. */
import { randomUUID } from 'node:crypto';
import type { FastifyInstance, FastifyReply } from 'fastify';
import type { ZodTypeProvider } from 'fastify-type-provider-zod';
import { countInText, recordId } from '../../api/field.ts';
import { type GlassRecord, glassRecordSchema, newGlassSchema } from '../../api/glass.ts';
import { tastingRecordSchema } from '../../api/tasting.ts';
import { z } from '../../api/zod.ts';
import { tastingCalendar } from '../calendar/tastingDays.ts';
import { Refusal } from '../problem.ts';
import { changeGlass, createGlass, findGlass, listGlasses, removeGlass } from '../store/glasses.ts';
import type { Store } from '../store/store.ts';
import { byId, problem, withKey } from './respond.ts';
import { versionOf, withVersion } from './version.ts';

const page = z.object({
  limit: countInText([1, 500]).default(100),
  before: recordId().optional().describe('The last glass of the page before.'),
});
const one = { 200: glassRecordSchema, default: problem };
const takenAway = z.object({ glass: glassRecordSchema, tastings: z.array(tastingRecordSchema) });
const calendar = {
  description: 'When to taste it, as iCalendar (RFC 5545)',
  content: { 'text/calendar': { schema: z.string() } },
};

export function glassRoutes(instance: FastifyInstance, { db }: Store) {
  const app = instance.withTypeProvider<ZodTypeProvider>();

  app.get(
    '/api/glasses',
    {
      schema: {
        summary: 'Glasses, newest first',
        querystring: page,
        response: { 200: z.object({ glasses: z.array(glassRecordSchema) }), default: problem },
      },
    },
    async ({ query }) => ({ glasses: await listGlasses(db, query.limit, query.before) }),
  );

  app.get(
    '/api/glasses/:id',
    { schema: { summary: 'One glass', params: byId, response: one } },
    async (request, reply) => tagged(reply, (await findGlass(db, request.params.id)) ?? noGlass(request.params.id)),
  );

  app.post(
    '/api/glasses',
    {
      schema: {
        summary: 'Keep a glass',
        headers: withKey,
        body: newGlassSchema,
        response: { ...one, 201: glassRecordSchema },
      },
    },
    async (request, reply) => {
      const id = request.headers['idempotency-key'] ?? randomUUID();
      const { outcome, record } = await createGlass(db, id, request.body, new Date());
      if (outcome === 'taken')
        throw new Refusal('id-taken', `Glass ${id} exists and is not the one sent.`, { current: record });
      if (outcome === 'new') reply.code(201).header('location', `/api/glasses/${id}`);
      return tagged(reply, record);
    },
  );

  app.put(
    '/api/glasses/:id',
    {
      schema: {
        summary: 'Change a glass; its tastings stay',
        params: byId,
        headers: withVersion,
        body: newGlassSchema,
        response: one,
      },
    },
    async (request, reply) => {
      const { id } = request.params;
      const yourVersion = versionOf(request.headers['if-match']);
      const result = (await changeGlass(db, id, yourVersion, request.body, new Date())) ?? noGlass(id);
      if (result.changed) return tagged(reply, result.record);
      const detail = `You changed version ${yourVersion}; the glass is at version ${result.record.version} now.`;
      throw new Refusal('version-conflict', detail, { yourVersion, current: result.record });
    },
  );

  app.delete(
    '/api/glasses/:id',
    {
      schema: {
        summary: 'Take a glass away with its tastings; the answer is what was taken, to put it back',
        params: byId,
        headers: withVersion,
        response: { 200: takenAway, default: problem },
      },
    },
    async (request) => {
      const { id } = request.params;
      const yourVersion = versionOf(request.headers['if-match']);
      const result = (await removeGlass(db, id, yourVersion)) ?? noGlass(id);
      if (result.removed) return { glass: result.record, tastings: result.tastings };
      const detail = `You would take away version ${yourVersion}; the glass is at version ${result.record.version} now.`;
      throw new Refusal('version-conflict', detail, { yourVersion, current: result.record });
    },
  );

  app.get(
    '/api/glasses/:id/reminders.ics',
    {
      schema: {
        summary: 'When to taste it again, for a calendar',
        params: byId,
        response: { 200: calendar, default: problem },
      },
    },
    async ({ params: { id } }, reply) => {
      const record = (await findGlass(db, id)) ?? noGlass(id);
      const text = tastingCalendar(record);
      if (text === undefined)
        throw new Refusal('not-found', `Glass ${id} was not bottled yet: there is nothing to remind of.`);
      reply.type('text/calendar; charset=utf-8').header('content-disposition', 'attachment; filename="tastings.ics"');
      return text;
    },
  );
}

function tagged(reply: FastifyReply, record: GlassRecord): GlassRecord {
  reply.header('etag', `"${record.version}"`);
  return record;
}

export function noGlass(id: string): never {
  throw new Refusal('not-found', `There is no glass ${id}.`);
}
