/**
 * Answers only to names that this server is known by. A page of another site that rebinds its name to this address (DNS
 * rebinding) shows itself by its Host header alone.
 */
import type { FastifyInstance } from 'fastify';
import { Refusal } from '../problem.ts';
import { loopbackHosts } from './loopback.ts';

/** Where the requests of in-process tests go, which have no socket. */
const PORT_WITHOUT_SOCKET = 80;

/** @param names further names and addresses that this server is reached by; loopback always is one */
export function guardHost(app: FastifyInstance, names: readonly string[]) {
  const known = new Set([...loopbackHosts, ...names.map((name) => name.toLowerCase())]);
  app.addHook('onRequest', async ({ headers, raw, protocol }) => {
    // Of two, which one counts is a matter of taste: neither.
    const given = raw.rawHeaders.filter((header, at) => at % 2 === 0 && header.toLowerCase() === 'host').length;
    const usual = protocol === 'https' ? 443 : 80;
    if (given > 1 || !isKnown(headers.host, known, portOf(app), usual)) {
      throw new Refusal('host-refused', 'Use the address that was printed when the server was started.');
    }
  });
}

/** @param usual the port that a host without one means */
export function isKnown(host: string | undefined, names: ReadonlySet<string>, port: number, usual = 80): boolean {
  const parts = /^(\[[0-9a-f:.]+\]|[^:[\]]+)(?::(\d{1,5}))?$/i.exec(host ?? '');
  if (!parts?.[1]) return false;
  return names.has(parts[1].toLowerCase()) && Number(parts[2] ?? usual) === port;
}

function portOf(app: FastifyInstance): number {
  const address = app.server.address();
  return address && typeof address === 'object' ? address.port : PORT_WITHOUT_SOCKET;
}
