/** `/api/cooks/whole`: a cook that was written down elsewhere and read by the page, taken in whole or not at all. */
import type { FastifyInstance } from 'fastify';
import type { ZodTypeProvider } from 'fastify-type-provider-zod';
import { eventSchema } from '../../api/event.ts';
import { z } from '../../api/zod.ts';
import type { EventOf, KnownEvent } from '../../core/log/event.ts';
import type { Logbook } from '../cooking/logbook.ts';
import { Refusal } from '../problem.ts';
import { problem } from './respond.ts';

const bodyLimit = 25 * 1024 * 1024;

export function wholeCookRoute(instance: FastifyInstance, logbook: Logbook) {
  instance.withTypeProvider<ZodTypeProvider>().post(
    '/api/cooks/whole',
    {
      bodyLimit,
      schema: {
        summary: 'Take in all events of a cook, all or none',
        body: z.array(eventSchema).min(2).max(200_000).describe('The beginning comes first.'),
        response: {
          201: z.object({
            cook: z.string(),
            events: z.int(),
            new: z.int().describe('Events that were not here before.'),
          }),
          default: problem,
        },
      },
    },
    async ({ body }, reply) => {
      const events = body as readonly KnownEvent[];
      const [begun] = events;
      if (!isBeginning(begun)) throw refused('0.kind', `is "${begun?.kind}"; allowed: begun`);
      const stray = events.findIndex(({ cook }, i) => cook !== begun.cook || (i > 0 && isBeginning(events[i])));
      if (stray >= 0)
        throw refused(`${stray}`, 'belongs to another cook, or begins it again; allowed: events of one cook');
      const tServer = logbook.now();
      const appended = await logbook.takeIn(
        begun,
        events.map((event) => ({ event, tServer })),
      );
      if (appended.outcome === 'differs') {
        const { id } = events[appended.place];
        throw new Refusal('event-differs', `Event ${id} exists and is not the one sent. Nothing was written.`);
      }
      reply.code(201).header('location', `/api/cooks/${begun.cook}`);
      return { cook: begun.cook, events: events.length, new: appended.fresh.length };
    },
  );
}

const isBeginning = (event: KnownEvent | undefined): event is EventOf<'begun'> & KnownEvent => event?.kind === 'begun';

function refused(field: string, message: string) {
  return new Refusal('invalid-input', `${field} ${message}`, { errors: [{ field, message: `${field} ${message}` }] });
}
