/** What every answer says about how a browser may use it: only our own scripts and styles, no framing, nothing sent elsewhere. */
import helmet from '@fastify/helmet';
import type { FastifyInstance } from 'fastify';
import { isLoopbackHost } from './guards/loopback.ts';

const SELF = ["'self'"];
const NONE = ["'none'"];

const directives = {
  defaultSrc: NONE,
  scriptSrc: SELF,
  styleSrc: SELF,
  imgSrc: [...SELF, 'data:'],
  connectSrc: SELF,
  fontSrc: SELF,
  manifestSrc: SELF,
  workerSrc: SELF,
  baseUri: NONE,
  formAction: NONE,
  frameAncestors: NONE,
  objectSrc: NONE,
};

/** The camera photographs a dilution, the screen stays awake at the stove, a thermometer may be on a serial port. Bluetooth
 * is not named: browsers built without it complain of the word in the console, and its default is the same. */
const PERMISSIONS =
  'camera=(self), screen-wake-lock=(self), serial=(self), microphone=(), geolocation=(), payment=(), usb=()';

/** What counts for pages over https or of this machine alone. */
const ONLY_TRUSTWORTHY = ['cross-origin-opener-policy', 'origin-agent-cluster'];

export async function sendHeaders(app: FastifyInstance) {
  await app.register(helmet, {
    contentSecurityPolicy: { useDefaults: false, directives },
    // Over plain http, as at home, a browser must not be told to come back over https.
    strictTransportSecurity: false,
    crossOriginEmbedderPolicy: false,
    crossOriginOpenerPolicy: { policy: 'same-origin' },
    crossOriginResourcePolicy: { policy: 'same-origin' },
    referrerPolicy: { policy: 'no-referrer' },
    xFrameOptions: { action: 'deny' },
  });
  app.addHook('onRequest', async (request, reply) => {
    // Over plain http in a network browsers take these for a mistake, and say so in the console.
    if (request.protocol === 'http' && !isLoopbackHost(request.headers.host)) {
      for (const header of ONLY_TRUSTWORTHY) reply.removeHeader(header);
    }
    reply.header('permissions-policy', PERMISSIONS);
    if (request.url.startsWith('/api/')) reply.header('cache-control', 'no-store');
  });
}
