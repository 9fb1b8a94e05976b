/** Serves the built pages: from a list made at the start, so that no request can name a file that is not on it. */
import { existsSync } from 'node:fs';
import { join } from 'node:path';
import fastifyStatic from '@fastify/static';
import type { FastifyInstance } from 'fastify';
import { Refusal, sendProblem } from './problem.ts';

/** The web build names these files by their content. */
const HASHED = /[\\/]assets[\\/][^\\/]+-[\w-]{8}\.\w+(\.map)?$/;

/** @param folder the web build; without one the API alone is served */
export async function servePages(app: FastifyInstance, folder: string) {
  const built = existsSync(join(folder, 'index.html'));
  if (built) {
    await app.register(fastifyStatic, {
      root: folder,
      wildcard: false,
      cacheControl: false,
      schemaHide: true,
      setHeaders: (reply, path) =>
        reply.header('cache-control', HASHED.test(path) ? 'public, max-age=31536000, immutable' : 'no-cache'),
    });
  }
  app.setNotFoundHandler((request, reply) => {
    const wantsPage = request.method === 'GET' && request.headers.accept?.includes('text/html');
    // Places of the app have addresses of their own, and one page that finds the way.
    if (built && wantsPage && !request.url.startsWith('/api')) return reply.sendFile('index.html');
    return sendProblem(
      request,
      reply,
      new Refusal('not-found', `There is nothing at ${request.method} ${request.url}.`),
    );
  });
}
