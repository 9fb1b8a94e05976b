/** The HTTP server, put together: guards, headers, routes, pages. Tests send requests to it without a socket. */
import { randomUUID } from 'node:crypto';
import compress from '@fastify/compress';
import type { FastifyInstance, FastifyServerOptions } from 'fastify';
import Fastify from 'fastify';
import { serializerCompiler } from 'fastify-type-provider-zod';
import type { z } from '../api/zod.ts';
import { guardAddressLength } from './guards/addressLength.ts';
import { guardHost } from './guards/host.ts';
import { guardOrigin } from './guards/origin.ts';
import { sendHeaders } from './headers.ts';
import { describeApi } from './openapi.ts';
import { version, webFolder } from './package.ts';
import { servePages } from './pages.ts';
import { answerWithProblems } from './problem.ts';
import { healthRoute } from './routes/health.ts';
import { kitRoutes } from './routes/kits.ts';
import { planRoutes } from './routes/plans.ts';
import { problemsRoute } from './routes/problems.ts';
import type { Store } from './store/store.ts';

export interface ServerOptions {
  readonly store: Store;
  /** Names and addresses besides loopback that the server answers to. */
  readonly names?: readonly string[];
  /** The web build; the package's own unless told. */
  readonly pages?: string;
  readonly logger?: NonNullable<FastifyServerOptions['logger']>;
}

export async function buildServer({
  store,
  names = [],
  pages = webFolder,
  logger = false,
}: ServerOptions): Promise<FastifyInstance> {
  const app: FastifyInstance = Fastify({
    logger,
    genReqId: () => randomUUID(),
    bodyLimit: 256 * 1024,
    requestTimeout: 10_000,
    http: { maxHeaderSize: 16 * 1024 },
    // Open streams would otherwise keep a closing server waiting.
    forceCloseConnections: true,
  });
  app.setValidatorCompiler<z.ZodType>(({ schema }) => (data) => {
    const { data: value, error } = schema.safeParse(data);
    return error ? { error } : { value };
  });
  app.setSerializerCompiler(serializerCompiler);
  app.removeContentTypeParser('text/plain');
  answerWithProblems(app);

  await sendHeaders(app);
  guardAddressLength(app);
  guardHost(app, names);
  guardOrigin(app);
  await app.register(compress);
  await describeApi(app, version);
  healthRoute(app, version);
  problemsRoute(app);
  kitRoutes(app, store);
  planRoutes(app, store);
  await servePages(app, pages);
  return app;
}
