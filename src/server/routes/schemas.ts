/** `/api/schemas`: the formats that other programs write and read, as JSON Schema. */
import type { FastifyInstance } from 'fastify';
import { eventJsonSchema } from '../../api/event.ts';

export function schemasRoute(app: FastifyInstance) {
  const event = JSON.stringify(eventJsonSchema());
  app.get('/api/schemas/event', { schema: { hide: true } }, (_, reply) =>
    reply.type('application/schema+json').send(event),
  );
}
