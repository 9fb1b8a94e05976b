/** `/api/cooks/:id/live`: a cook as it goes on, as server-sent events. */
import type { FastifyInstance } from 'fastify';
import type { ZodTypeProvider } from 'fastify-type-provider-zod';
import { countInText, placeRange } from '../../api/field.ts';
import { z } from '../../api/zod.ts';
import { openEventStream } from '../cooking/eventStream.ts';
import { followCook } from '../cooking/followCook.ts';
import type { Logbook } from '../cooking/logbook.ts';
import { Refusal } from '../problem.ts';
import { findCook } from '../store/cooks.ts';
import type { Store } from '../store/store.ts';
import { noCook } from './cooks.ts';
import { byId, problem } from './respond.ts';

const mostStreams = 50;

const place = countInText(placeRange).optional();

export function liveRoute(instance: FastifyInstance, store: Store, logbook: Logbook, beatMs: number) {
  const app = instance.withTypeProvider<ZodTypeProvider>();
  let open = 0;

  app.get(
    '/api/cooks/:id/live',
    {
      compress: false,
      exposeHeadRoute: false,
      schema: {
        summary: 'A cook as it goes on, as server-sent events',
        description:
          'Sends `snapshot` first (its id is the place of the newest event), then each event as `logged` with its place as id. ' +
          '`beat` comes every 2 s with the time and the newest place: judge by it how old the picture is. `storage` tells ' +
          'when events can not be written and when they can again; `pending` is an event that is not written yet. Coming ' +
          'back with `Last-Event-ID` or `since`, only what was missed is sent.',
        params: byId,
        querystring: z.object({ since: place.describe('Place of the last event that you have.') }),
        headers: z.object({ 'last-event-id': place }),
        response: { default: problem },
      },
    },
    async (request, reply) => {
      const { id: cook } = request.params;
      if (!(await findCook(store.db, cook))) noCook(cook);
      if (open >= mostStreams)
        throw new Refusal('too-many-streams', `Up to ${mostStreams} streams are open at a time.`);
      const stream = openEventStream(reply);
      open += 1;
      stream.onEnd(() => {
        open -= 1;
      });
      const since = request.headers['last-event-id'] ?? request.query.since;
      try {
        await followCook(stream, store, logbook, { cook, since, beatMs });
      } catch (error) {
        request.log.error(error);
        reply.raw.destroy();
      }
      return reply;
    },
  );
}
