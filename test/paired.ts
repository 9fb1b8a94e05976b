// Devices that are let in, for tests: a name that stands for the network, and requests with a device's token.
import type { InjectOptions } from 'fastify';
import type { DeviceRole, Invitation } from '../src/api/device.ts';
import type { testServer } from './testServer.ts';

export type TestServer = Awaited<ReturnType<typeof testServer>>;

/** A name that the server answers to and that is not the machine's own: who asks for it has to be let in. */
export const onNetwork = { host: 'pan.test:80' };

/** Lets a device in by the way that a person would take; gives what its requests say. */
export async function pair(app: TestServer, role: DeviceRole, terms: Partial<Invitation> = {}) {
  const invited = await app.inject({ method: 'POST', url: '/api/invitations', payload: { role, ...terms } });
  const { code } = invited.json();
  const payload = { code, name: `The ${role}` };
  const paired = await app.inject({ method: 'POST', url: '/api/pairing', headers: onNetwork, payload });
  const { token, device } = paired.json() as { token: string; device: { id: string; words: string } };
  const headers = { ...onNetwork, authorization: `Bearer ${token}` };
  const ask = (url: string, more: InjectOptions = {}) =>
    app.inject({ url, ...more, headers: { ...headers, ...more.headers } });
  return { code, token, device, headers, ask };
}
