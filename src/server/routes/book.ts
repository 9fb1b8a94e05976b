/** `/api/book`: all cooks with what their logs come to, and how the beers that they went into were liked. */
import type { FastifyInstance } from 'fastify';
import type { ZodTypeProvider } from 'fastify-type-provider-zod';
import { type BookEntry, bookEntrySchema } from '../../api/book.ts';
import { countInText, recordId } from '../../api/field.ts';
import { tastedBeerSchema } from '../../api/tastedBeer.ts';
import { z } from '../../api/zod.ts';
import type { Logbook } from '../cooking/logbook.ts';
import type { Summaries } from '../cooking/summaries.ts';
import type { Store } from '../store/store.ts';
import { listBook } from '../store/summaries.ts';
import { tastedBeers } from '../store/tastedBeers.ts';
import { problem } from './respond.ts';

const page = z.object({
  limit: countInText([1, 1000]).default(500),
  before: recordId().optional().describe('The last cook of the page before.'),
});

export function bookRoutes(instance: FastifyInstance, { db }: Store, logbook: Logbook, summaries: Summaries) {
  const app = instance.withTypeProvider<ZodTypeProvider>();

  app.get(
    '/api/book',
    {
      schema: {
        summary: 'Cooks and rehearsals with what they came to, newest first',
        querystring: page,
        response: { 200: z.object({ entries: z.array(bookEntrySchema) }), default: problem },
      },
      // The entries are the server's own making: to check 200 of them against their schema takes longer than to find them.
      serializerCompiler: () => (answer) => JSON.stringify(answer),
    },
    async ({ query }, reply) => {
      const entries: readonly BookEntry[] = await listBook(db, logbook.now(), query.limit, query.before);
      if (entries.some(({ due }) => due)) summaries.wake();
      return reply.send({ entries: [...entries] as z.infer<typeof bookEntrySchema>[] });
    },
  );

  app.get(
    '/api/book/beers',
    {
      schema: {
        summary: 'Beers that were tasted: how they were liked, and which cooks their sugars came from',
        response: { 200: z.object({ beers: z.array(tastedBeerSchema) }), default: problem },
      },
    },
    async () => ({ beers: await tastedBeers(db) }),
  );
}
