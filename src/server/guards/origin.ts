/**
 * Keeps pages of other sites from writing here. Browsers name the page's origin with every request that writes; a client
 * that sends none is not a browser (a script, a thermometer), and no page can make it write.
 */
import type { FastifyInstance } from 'fastify';
import { Refusal } from '../problem.ts';

const SAFE = new Set(['GET', 'HEAD', 'OPTIONS']);

export function guardOrigin(app: FastifyInstance) {
  app.addHook('onRequest', async (request) => {
    if (SAFE.has(request.method)) return;
    const { origin, host } = request.headers;
    const site = request.headers['sec-fetch-site'];
    const foreignOrigin =
      origin !== undefined && origin.toLowerCase() !== `${request.protocol}://${host}`.toLowerCase();
    const foreignSite = site !== undefined && site !== 'same-origin' && site !== 'none';
    if (foreignOrigin || foreignSite) {
      throw new Refusal(
        'origin-refused',
        'Only a page that this server sent, or a program that is no browser, may write.',
      );
    }
  });
}
