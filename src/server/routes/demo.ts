/** `/api/demo`: an invented club's kits, plans, cooks, lots and glasses, put in to look round, and taken out in one act. */
import type { FastifyInstance } from 'fastify';
import type { ZodTypeProvider } from 'fastify-type-provider-zod';
import { demoSchema } from '../../api/demo.ts';
import { z } from '../../api/zod.ts';
import type { Logbook } from '../cooking/logbook.ts';
import { putInDemo, stateOfDemo, takeOutDemo } from '../demo/demo.ts';
import type { Store } from '../store/store.ts';
import { problem } from './respond.ts';

export function demoRoutes(instance: FastifyInstance, { db }: Store, logbook: Logbook) {
  const app = instance.withTypeProvider<ZodTypeProvider>();
  const answer = { 200: demoSchema, default: problem };

  app.get('/api/demo', { schema: { summary: 'Whether the demo is in, and where to look', response: answer } }, () =>
    stateOfDemo(db),
  );

  app.put(
    '/api/demo',
    { schema: { summary: 'Put the demo in; a second time changes nothing', response: answer } },
    async () => {
      await putInDemo(db, logbook, new Date(logbook.now()));
      return stateOfDemo(db);
    },
  );

  app.delete(
    '/api/demo',
    {
      schema: {
        summary: 'Take the demo out, with what was changed in it or noted of it',
        response: { 204: z.null(), default: problem },
      },
    },
    async (_, reply) => {
      await takeOutDemo(db);
      return reply.code(204).send(null);
    },
  );
}
