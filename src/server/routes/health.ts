import type { FastifyInstance } from 'fastify';
import type { ZodTypeProvider } from 'fastify-type-provider-zod';
import { healthSchema } from '../../api/health.ts';

export function healthRoute(app: FastifyInstance, version: string) {
  app
    .withTypeProvider<ZodTypeProvider>()
    .get('/api/health', { schema: { summary: 'Is the server up?', response: { 200: healthSchema } } }, () => ({
      status: 'up' as const,
      version,
    }));
}
