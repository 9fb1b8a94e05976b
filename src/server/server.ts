/** The HTTP server, put together: guards, headers, routes, pages. Tests send requests to it without a socket. */
import { randomUUID } from 'node:crypto';
import compress from '@fastify/compress';
import type { FastifyInstance, FastifyServerOptions } from 'fastify';
import Fastify from 'fastify';
import { serializerCompiler } from 'fastify-type-provider-zod';
import type { z } from '../api/zod.ts';
import { keepBackups } from './cooking/keepBackups.ts';
import { createLogbook } from './cooking/logbook.ts';
import { type SteadyClock, steadyClock } from './cooking/steadyClock.ts';
import { guardAddressLength } from './guards/addressLength.ts';
import { guardHost } from './guards/host.ts';
import { guardOrigin } from './guards/origin.ts';
import { sendHeaders } from './headers.ts';
import { describeApi } from './openapi.ts';
import { version, webFolder } from './package.ts';
import { servePages } from './pages.ts';
import { answerUnroutable, answerWithProblems } from './problem.ts';
import { cookEventRoutes } from './routes/cookEvents.ts';
import { cookFileRoutes } from './routes/cookFiles.ts';
import { cookRoutes } from './routes/cooks.ts';
import { glassRoutes } from './routes/glasses.ts';
import { healthRoute } from './routes/health.ts';
import { kitRoutes } from './routes/kits.ts';
import { liveRoute } from './routes/live.ts';
import { lotRoutes } from './routes/lots.ts';
import { planRoutes } from './routes/plans.ts';
import { problemsRoute } from './routes/problems.ts';
import { readingsRoute } from './routes/readings.ts';
import { schemasRoute } from './routes/schemas.ts';
import { tastingRoutes } from './routes/tastings.ts';
import { timeRoute } from './routes/time.ts';
import type { Store } from './store/store.ts';

export interface ServerOptions {
  readonly store: Store;
  /** Names and addresses besides loopback that the server answers to. */
  readonly names?: readonly string[];
  /** The web build; the package's own unless told. */
  readonly pages?: string;
  readonly logger?: NonNullable<FastifyServerOptions['logger']>;
  readonly clock?: SteadyClock;
  /** Time between two beats of a live stream, and between two tries to write what could not be written, ms. */
  readonly beatMs?: number;
  readonly retryMs?: number;
}

export async function buildServer({
  store,
  names = [],
  pages = webFolder,
  logger = false,
  clock = steadyClock(),
  beatMs = 2000,
  retryMs = 5000,
}: ServerOptions): Promise<FastifyInstance> {
  const app: FastifyInstance = Fastify({
    logger,
    genReqId: () => randomUUID(),
    bodyLimit: 256 * 1024,
    requestTimeout: 10_000,
    http: { maxHeaderSize: 16 * 1024 },
    // Open streams would otherwise keep a closing server waiting.
    forceCloseConnections: true,
    frameworkErrors: answerUnroutable,
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
  lotRoutes(app, store);
  glassRoutes(app, store);
  tastingRoutes(app, store);

  const warn = (problem: unknown, message: string) => app.log.warn({ err: problem }, message);
  const backups = keepBackups({ store, nowMs: clock.nowMs, warn });
  const logbook = createLogbook({ store, clock, backups, warn, retryMs });
  cookRoutes(app, store, logbook);
  cookEventRoutes(app, store, logbook);
  cookFileRoutes(app, store, logbook);
  liveRoute(app, store, logbook, beatMs);
  readingsRoute(app, store, logbook);
  timeRoute(app, logbook);
  schemasRoute(app);
  const watch = setInterval(
    () => logbook.noteClockJumps().catch((error) => warn(error, 'A clock jump was not noted')),
    2000,
  );
  const backUps = setInterval(() => void backups.look(), 60_000);
  app.addHook('preClose', async () => {
    clearInterval(watch);
    clearInterval(backUps);
    await logbook.stop();
  });

  await servePages(app, pages);
  return app;
}
