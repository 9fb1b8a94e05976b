/** Refuses addresses longer than any that this server gives out. */
import type { FastifyInstance } from 'fastify';
import { Refusal } from '../problem.ts';

const MOST_CHARACTERS = 4096;

export function guardAddressLength(app: FastifyInstance) {
  app.addHook('onRequest', async (request) => {
    if (request.raw.url && request.raw.url.length > MOST_CHARACTERS) {
      throw new Refusal('address-too-long', `An address may have up to ${MOST_CHARACTERS} characters.`);
    }
  });
}
