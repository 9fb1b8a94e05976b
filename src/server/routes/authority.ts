/** `/api/authority`: the certificate of the home's own authority, for a phone that is to trust it. It holds no secret. */
import type { FastifyInstance } from 'fastify';
import type { ZodTypeProvider } from 'fastify-type-provider-zod';
import { z } from '../../api/zod.ts';
import { Refusal } from '../problem.ts';
import { problem } from './respond.ts';

export function authorityRoute(app: FastifyInstance, cert: string | undefined) {
  app.withTypeProvider<ZodTypeProvider>().get(
    '/api/authority',
    {
      schema: {
        summary: "The certificate of the home's own authority, if one was made",
        response: {
          200: { content: { 'application/x-x509-ca-cert': { schema: z.string() } }, description: 'PEM' },
          default: problem,
        },
      },
    },
    (_, reply) => {
      if (!cert) throw new Refusal('not-found', 'None was made: `umberpan trust` makes one.');
      reply.header('content-disposition', 'attachment; filename="umberpan.crt"');
      reply.type('application/x-x509-ca-cert');
      return cert;
    },
  );
}
