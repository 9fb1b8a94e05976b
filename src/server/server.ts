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
import { keepSummaries } from './cooking/summaries.ts';
import { brokerAddresses } from './devices/addresses.ts';
import { openDevices } from './devices/devices.ts';
import { type Invitations, openInvitations } from './devices/invitations.ts';
import { guardAddressLength } from './guards/addressLength.ts';
import { guardBodyShape } from './guards/bodyShape.ts';
import { guardCaller } from './guards/caller.ts';
import { guardHost } from './guards/host.ts';
import { guardOrigin } from './guards/origin.ts';
import { guardWriteRate } from './guards/writeRate.ts';
import { sendHeaders } from './headers.ts';
import { openInputs } from './inputs/inputs.ts';
import { createIntake } from './inputs/intake.ts';
import { type BrokerWish, openBroker } from './inputs/ownBroker.ts';
import { describeApi } from './openapi.ts';
import { version, webFolder } from './package.ts';
import { servePages } from './pages.ts';
import { answerUnreadable, answerUnroutable, answerWithProblems } from './problem.ts';
import { authorityRoute } from './routes/authority.ts';
import { bookRoutes } from './routes/book.ts';
import { cookEventRoutes } from './routes/cookEvents.ts';
import { cookFileRoutes } from './routes/cookFiles.ts';
import { cookRoutes } from './routes/cooks.ts';
import { demoRoutes } from './routes/demo.ts';
import { deviceRoutes } from './routes/devices.ts';
import { glassRoutes } from './routes/glasses.ts';
import { healthRoute } from './routes/health.ts';
import { inputRoutes } from './routes/inputs.ts';
import { kitRoutes } from './routes/kits.ts';
import { wholeCookRoute } from './routes/kitsCooks.ts';
import { liveRoute } from './routes/live.ts';
import { lotNoteRoutes } from './routes/lotNotes.ts';
import { lotRoutes } from './routes/lots.ts';
import { planRoutes } from './routes/plans.ts';
import { problemsRoute } from './routes/problems.ts';
import { readingsRoute } from './routes/readings.ts';
import { schemasRoute } from './routes/schemas.ts';
import { tastingRoutes } from './routes/tastings.ts';
import { timeRoute } from './routes/time.ts';
import { workspaceRoutes } from './routes/workspace.ts';
import type { Store } from './store/store.ts';

export interface ServerOptions {
  readonly store: Store;
  /** Names and addresses besides loopback that the server answers to. */
  readonly names?: readonly string[];
  /** Where devices on the network reach it, for the links that let them in. */
  readonly addresses?: () => readonly string[];
  /** The web build; the package's own unless told. */
  readonly pages?: string;
  readonly logger?: NonNullable<FastifyServerOptions['logger']>;
  readonly clock?: SteadyClock;
  /** Serves over https with this. */
  readonly tls?: { readonly key: string; readonly cert: string };
  /** Certificate that a phone may be told to trust. */
  readonly authority?: string | undefined;
  /** Where to open an MQTT broker of the server's own; none unless told. */
  readonly broker?: BrokerWish | undefined;
  /** Codes that let devices in, when somebody else makes some too. */
  readonly invitations?: Invitations;
  /** Time between two beats of a live stream, and between two tries to write what could not be written, ms. */
  readonly beatMs?: number;
  readonly retryMs?: number;
  /** Time within which a whole request has to come, ms. */
  readonly requestMs?: number;
}

export async function buildServer({
  store,
  names = [],
  addresses = () => [],
  invitations,
  tls,
  authority,
  broker: brokerWish,
  pages = webFolder,
  logger = false,
  clock = steadyClock(),
  beatMs = 2000,
  retryMs = 5000,
  requestMs = 10_000,
}: ServerOptions): Promise<FastifyInstance> {
  const app: FastifyInstance = Fastify({
    logger,
    ...(tls && { https: tls }),
    genReqId: () => randomUUID(),
    bodyLimit: 256 * 1024,
    requestTimeout: requestMs,
    // Node swaps the two times if the one for the head is the longer one, and looks each half minute unless told.
    http: {
      maxHeaderSize: 16 * 1024,
      requestTimeout: requestMs,
      headersTimeout: requestMs,
      connectionsCheckingInterval: 1000,
    },
    clientErrorHandler: answerUnreadable,
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
  const devices = await openDevices(store, clock);
  guardCaller(app, devices);
  guardWriteRate(app, clock.nowMs);
  guardBodyShape(app);
  await app.register(compress);
  await describeApi(app, version);
  healthRoute(app, version);
  problemsRoute(app);
  authorityRoute(app, authority);
  kitRoutes(app, store);
  planRoutes(app, store);
  lotRoutes(app, store);
  lotNoteRoutes(app, store);
  glassRoutes(app, store);
  tastingRoutes(app, store);
  deviceRoutes(app, store, devices, invitations ?? openInvitations(clock.nowMs), addresses);

  const warn = (problem: unknown, message: string) => app.log.warn({ err: problem }, message);
  const backups = keepBackups({ store, nowMs: clock.nowMs, warn });
  const logbook = createLogbook({ store, clock, backups, warn, retryMs });
  const summaries = keepSummaries({ db: store.db, now: () => clock.now(), warn });
  bookRoutes(app, store, logbook, summaries);
  workspaceRoutes(app, store, logbook);
  cookRoutes(app, store, logbook);
  cookEventRoutes(app, store, logbook);
  cookFileRoutes(app, store, logbook);
  wholeCookRoute(app, logbook);
  demoRoutes(app, store, logbook);
  liveRoute(app, store, logbook, beatMs);
  const intake = createIntake(logbook, clock.nowMs);
  readingsRoute(app, store, intake, devices);
  const broker = brokerWish && (await openBroker({ ...brokerWish, tls, devices, nowMs: clock.nowMs, warn }));
  const inputs = await openInputs({ store, intake, clock, devices, broker, warn });
  inputRoutes(app, inputs, () => (broker ? brokerAddresses(broker, addresses()) : null));
  timeRoute(app, logbook);
  schemasRoute(app);
  const watch = setInterval(
    () => logbook.noteClockJumps().catch((error) => warn(error, 'A clock jump was not noted')),
    2000,
  );
  const letOut = setInterval(
    () =>
      devices.letOutExpired().catch((error) => warn(error, 'A device whose time is over was not taken from the list')),
    1000,
  );
  const backUps = setInterval(() => void backups.look(), 60_000);
  app.addHook('preClose', async () => {
    clearInterval(watch);
    clearInterval(backUps);
    clearInterval(letOut);
    await summaries.stop();
    await inputs.stop();
    await broker?.stop();
    await logbook.stop();
  });

  await servePages(app, pages);
  return app;
}
