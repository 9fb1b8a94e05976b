/** `/api/time`: the server's half of the four time stamps by which a device measures how far its clock is off. */
import type { FastifyInstance } from 'fastify';
import type { ZodTypeProvider } from 'fastify-type-provider-zod';
import { z } from '../../api/zod.ts';
import type { Logbook } from '../cooking/logbook.ts';

const stamp = z.iso.datetime({ precision: 3 });

export function timeRoute(app: FastifyInstance, logbook: Logbook) {
  app.withTypeProvider<ZodTypeProvider>().get(
    '/api/time',
    {
      schema: {
        summary: "The server's clock, when the question came and when the answer goes",
        response: { 200: z.object({ received: stamp, sent: stamp }) },
      },
    },
    () => {
      const received = logbook.now();
      return { received, sent: logbook.now() };
    },
  );
}
