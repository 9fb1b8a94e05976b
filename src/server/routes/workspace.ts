/** `/api/workspace`: everything that is kept, as one file. */
import { Readable } from 'node:stream';
import type { FastifyInstance } from 'fastify';
import type { ZodTypeProvider } from 'fastify-type-provider-zod';
import { z } from '../../api/zod.ts';
import type { Store } from '../store/store.ts';
import { workspaceText } from '../store/workspace.ts';
import { problem } from './respond.ts';

export function workspaceRoute(instance: FastifyInstance, { db }: Store) {
  instance.withTypeProvider<ZodTypeProvider>().get(
    '/api/workspace',
    {
      schema: {
        summary: 'Everything that is kept, as one JSON file',
        response: { 200: z.string(), default: problem },
      },
    },
    async (_, reply) => {
      reply.type('application/json').header('content-disposition', 'attachment; filename="umberpan-workspace.json"');
      return reply.send(Readable.from(workspaceText(db)) as unknown as string);
    },
  );
}
