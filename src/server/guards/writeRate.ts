/** Keeps one device that has gone wrong from filling the store: up to 100 writes a second, most of which no kitchen needs. */
import type { FastifyInstance } from 'fastify';
import { Refusal } from '../problem.ts';

const mostInASecond = 100;

/** @returns whether this one may write once more, counting it */
export function writeRate(nowMs: () => number): (who: string) => boolean {
  const written = new Map<string, { second: number; count: number }>();
  return (who) => {
    const second = Math.floor(nowMs() / 1000);
    const before = written.get(who);
    const count = before?.second === second ? before.count + 1 : 1;
    written.set(who, { second, count });
    return count <= mostInASecond;
  };
}

export function guardWriteRate(app: FastifyInstance, nowMs: () => number) {
  const mayWrite = writeRate(nowMs);
  app.addHook('onRequest', async ({ method, caller }) => {
    if (caller.kind !== 'device' || method === 'GET' || method === 'HEAD') return;
    const { id, name } = caller.device;
    if (!mayWrite(id))
      throw new Refusal('too-many-writes', `${name} may write ${mostInASecond} times in a second.`, {}, 1);
  });
}
