import { randomUUID } from 'node:crypto';
import { setTimeout as pause } from 'node:timers/promises';
import { expect, it } from 'vitest';
import { defaultRequest } from '../../src/core/planning/request.ts';
import { scratchFolder } from '../testServer.ts';
import { startBuiltServer } from './builtServer.ts';

const ROUNDS = 20;
const WRITERS = 4;

it(`kill -9 of the server during writing, ${ROUNDS} times, loses no acknowledged plan and doubles none`, async () => {
  const data = scratchFolder();
  const acknowledged: string[] = [];
  for (let round = 0; round < ROUNDS; round++) {
    const before = acknowledged.length;
    const server = await startBuiltServer(data);
    const writers = Array.from({ length: WRITERS }, () => writeUntilItEnds(server.address, acknowledged));
    // Not before something was written, and then at another moment of the writing each time.
    while (acknowledged.length === before) await pause(1);
    await pause(20 + ((round * 37) % 150));
    await server.end('SIGKILL');
    await Promise.all(writers);
  }
  const server = await startBuiltServer(data);
  const kept = await everyPlan(server.address);
  const { code, stderr } = await server.end('SIGTERM');

  console.log(`${acknowledged.length} plans acknowledged over ${ROUNDS} kills, ${kept.length} kept`);
  expect({ code, stderr }).toEqual({ code: 0, stderr: '' });
  expect(new Set(kept).size).toBe(kept.length);
  expect(acknowledged.filter((id) => !kept.includes(id))).toEqual([]);
  // What was kept without an acknowledgement can only be what was under way when the server was killed.
  expect(kept.length - acknowledged.length).toBeLessThanOrEqual(ROUNDS * WRITERS);
});

async function writeUntilItEnds(address: string, acknowledged: string[]) {
  try {
    for (;;) {
      const id = randomUUID();
      const answer = await fetch(`${address}api/plans`, {
        method: 'POST',
        headers: { 'content-type': 'application/json', 'idempotency-key': id },
        body: JSON.stringify({ kitId: null, request: defaultRequest }),
      });
      if (answer.status !== 201) throw new Error(`refused: ${await answer.text()}`);
      acknowledged.push(id);
    }
  } catch (error) {
    // The connection breaks when the server is killed; any other failure is one.
    if (!(error instanceof TypeError)) throw error;
  }
}

async function everyPlan(address: string): Promise<string[]> {
  const ids: string[] = [];
  for (;;) {
    const before = ids.length > 0 ? `&before=${ids.at(-1)}` : '';
    const { plans } = (await (await fetch(`${address}api/plans?limit=500${before}`)).json()) as {
      plans: { id: string }[];
    };
    ids.push(...plans.map(({ id }) => id));
    if (plans.length < 500) return ids;
  }
}
