/**
 * Who asks, and whether they may. The machine that serves is its owner's: what comes from it, to its own name, may do
 * everything. Any other device shows a token with each request; there are no cookies that a page of another site could ride on.
 */
import type { FastifyInstance, FastifyRequest } from 'fastify';
import type { Device } from '../../api/device.ts';
import type { Devices } from '../devices/devices.ts';
import { Refusal } from '../problem.ts';
import { areaOf, sharedRoutes, whoMay } from './access.ts';
import { isLoopbackAddress, isLoopbackHost } from './loopback.ts';

export type Caller =
  | { readonly kind: 'host' }
  | { readonly kind: 'device'; readonly device: Device }
  | { readonly kind: 'nobody' };

declare module 'fastify' {
  interface FastifyRequest {
    caller: Caller;
  }
}

export function guardCaller(app: FastifyInstance, devices: Devices) {
  app.decorateRequest('caller');
  app.addHook('onRequest', async (request, reply) => {
    request.caller = await callerOf(request, devices);
    refuseUnlessAllowed(request);
    if (request.caller.kind !== 'device') return;
    // Also a stream that is open ends when its device is let out.
    reply.raw.once(
      'close',
      devices.whenOut(request.caller.device.id, () => reply.raw.destroy()),
    );
  });
}

async function callerOf(request: FastifyRequest, devices: Devices): Promise<Caller> {
  const { authorization, host } = request.headers;
  if (authorization !== undefined) {
    const [, token] = /^Bearer ([\w-]{20,100})$/i.exec(authorization) ?? [];
    const device = token === undefined ? undefined : await devices.ofToken(token);
    return device ? { kind: 'device', device } : { kind: 'nobody' };
  }
  // A name of ours that is no loopback name may be asked for by a page of that name; it shows a token like any other.
  const isHost = isLoopbackAddress(request.socket.remoteAddress) && isLoopbackHost(host);
  return { kind: isHost ? 'host' : 'nobody' };
}

function refuseUnlessAllowed({ caller, method, routeOptions, params }: FastifyRequest) {
  const area = areaOf(routeOptions.url ?? '');
  // Pages hold no data; an address that is not there is not there for anybody.
  if (area === undefined || caller.kind === 'host') return;
  const who = whoMay(method, area);
  if (who === 'anybody') return;
  if (caller.kind === 'nobody') {
    throw new Refusal('not-paired', 'Ask the keeper for a code, and pair this device at /pair.');
  }
  const { name, role, cook } = caller.device;
  if (!who.includes(role)) {
    throw new Refusal('not-allowed', `${name} is paired as ${role}; this is for ${who.join(', ')}.`);
  }
  if (role !== 'reader' || cook === null) return;
  const { id } = params as { readonly id?: string };
  if (!sharedRoutes.has(routeOptions.url) || (id ?? cook) !== cook) {
    throw new Refusal('not-shared', `One cook was shared with ${name}; this is something else.`);
  }
}
