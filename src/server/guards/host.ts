/**
 * Answers only to names that this server is known by. A page of another site that rebinds its name to this address (DNS
 * rebinding) shows itself by its Host header alone.
 */
import type { FastifyInstance } from 'fastify';
import { Refusal } from '../problem.ts';

const LOOPBACK = ['localhost', '127.0.0.1', '[::1]'];
/** Where the requests of in-process tests go, which have no socket. */
const PORT_WITHOUT_SOCKET = 80;

/** @param names further names and addresses that this server is reached by; loopback always is one */
export function guardHost(app: FastifyInstance, names: readonly string[]) {
  const known = new Set([...LOOPBACK, ...names.map((name) => name.toLowerCase())]);
  app.addHook('onRequest', async (request) => {
    if (!isKnown(request.headers.host, known, portOf(app))) {
      throw new Refusal('host-refused', 'Use the address that was printed when the server was started.');
    }
  });
}

export function isKnown(host: string | undefined, names: ReadonlySet<string>, port: number): boolean {
  const parts = /^(\[[0-9a-f:.]+\]|[^:[\]]+)(?::(\d{1,5}))?$/i.exec(host ?? '');
  if (!parts?.[1]) return false;
  return names.has(parts[1].toLowerCase()) && Number(parts[2] ?? 80) === port;
}

function portOf(app: FastifyInstance): number {
  const address = app.server.address();
  return address && typeof address === 'object' ? address.port : PORT_WITHOUT_SOCKET;
}
