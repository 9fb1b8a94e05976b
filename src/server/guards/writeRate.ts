/** Keeps one device that has gone wrong from filling the store: up to 100 writes a second, most of which no kitchen needs. */
import type { FastifyInstance } from 'fastify';
import { Refusal } from '../problem.ts';

const mostInASecond = 100;

export function guardWriteRate(app: FastifyInstance, nowMs: () => number) {
  const written = new Map<string, { second: number; count: number }>();
  app.addHook('onRequest', async ({ method, caller }) => {
    if (caller.kind !== 'device' || method === 'GET' || method === 'HEAD') return;
    const second = Math.floor(nowMs() / 1000);
    const { id, name } = caller.device;
    const before = written.get(id);
    const count = before?.second === second ? before.count + 1 : 1;
    written.set(id, { second, count });
    if (count > mostInASecond)
      throw new Refusal('too-many-writes', `${name} may write ${mostInASecond} times in a second.`, {}, 1);
  });
}
