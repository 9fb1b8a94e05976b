import type { FastifyInstance } from 'fastify';
import type { ZodTypeProvider } from 'fastify-type-provider-zod';
import { problemKinds } from '../../api/problem.ts';
import { z } from '../../api/zod.ts';

const kinds = z.record(z.string(), z.object({ status: z.int(), title: z.string() }));

export function problemsRoute(app: FastifyInstance) {
  app
    .withTypeProvider<ZodTypeProvider>()
    .get(
      '/api/problems',
      { schema: { summary: 'Every kind of problem', response: { 200: kinds } } },
      () => problemKinds,
    );
}
