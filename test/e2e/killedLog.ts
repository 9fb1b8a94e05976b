// Kills a server while cooks and plans are written to it, and looks afterwards whether all that it acknowledged is there, once.
import { randomUUID } from 'node:crypto';
import { setTimeout as pause } from 'node:timers/promises';
import type { StampedEvent } from '../../src/core/log/event.ts';
import { defaultRequest } from '../../src/core/planning/request.ts';
import { sampleBodies, sampleCook, sampleDevice } from '../sampleCook.ts';
import { startBuiltServer } from './builtServer.ts';

const writers = 4;
/** Single events, batches of seven and plans by turns. */
const mostUnderWay = 7;

/** Events and plans, counted alike. */
export interface KilledLog {
  readonly acknowledged: number;
  readonly kept: number;
  readonly lost: readonly string[];
  readonly doubled: number;
  /** Kept without having been acknowledged: under way when the server was killed. */
  readonly unasked: number;
  /** As many as can have been under way. */
  readonly mostUnasked: number;
  readonly damaged: number;
}

export async function killWhileWriting(data: string, rounds: number): Promise<KilledLog> {
  const { cook, begun } = sampleCook();
  const acknowledged: string[] = [];
  for (let round = 0; round < rounds; round++) {
    const before = acknowledged.length;
    const server = await startBuiltServer(data);
    if (round === 0) await post(`${server.address}api/cooks`, begun);
    const writing = Array.from({ length: writers }, (_, writer) =>
      writeUntilItEnds(server.address, cook, writer, acknowledged),
    );
    // Not before something was written, and then at another moment of the writing each time.
    while (acknowledged.length === before) await pause(1);
    await pause(5 + ((round * 37) % 150));
    await server.end('SIGKILL');
    await Promise.all(writing);
  }
  const server = await startBuiltServer(data);
  const events = await everyEvent(`${server.address}api/cooks/${cook}/events`);
  const kept = [...events.filter((id) => id !== begun.id), ...(await everyPlan(server.address))];
  const { damaged } = (await (await fetch(`${server.address}api/cooks/${cook}`)).json()) as { damaged: number[] };
  await server.end('SIGTERM');
  const ids = new Set(kept);
  return {
    acknowledged: acknowledged.length,
    kept: kept.length,
    lost: acknowledged.filter((id) => !ids.has(id)),
    doubled: kept.length - ids.size,
    unasked: ids.size - acknowledged.length,
    mostUnasked: rounds * writers * mostUnderWay,
    damaged: damaged.length,
  };
}

async function writeUntilItEnds(address: string, cook: string, writer: number, acknowledged: string[]) {
  const device = sampleDevice(cook);
  try {
    for (let count = writer; ; count++) {
      if (count % 3 === 2) {
        const id = randomUUID();
        const plan = { kitId: null, request: defaultRequest };
        await taken(post(`${address}api/plans`, plan, { 'idempotency-key': id }));
        acknowledged.push(id);
        continue;
      }
      const batch = Array.from({ length: count % 3 ? 1 : mostUnderWay }, () =>
        device.make('reading', sampleBodies.reading, count),
      );
      const answer = await taken(post(`${address}api/cooks/${cook}/events`, batch));
      acknowledged.push(...((await answer.json()) as { id: string }[]).map(({ id }) => id));
    }
  } catch (error) {
    // The connection breaks when the server is killed; any other failure is one.
    if (!(error instanceof TypeError)) throw error;
  }
}

async function taken(asking: Promise<Response>): Promise<Response> {
  const answer = await asking;
  if (answer.status !== 201) throw new Error(`refused: ${await answer.text()}`);
  return answer;
}

function post(url: string, body: object, more: Readonly<Record<string, string>> = {}) {
  const headers = { 'content-type': 'application/json', ...more };
  return fetch(url, { method: 'POST', headers, body: JSON.stringify(body) });
}

async function everyEvent(url: string): Promise<string[]> {
  const text = await (await fetch(url, { headers: { accept: 'application/x-ndjson' } })).text();
  return text
    .split('\n')
    .filter(Boolean)
    .map((line) => (JSON.parse(line) as StampedEvent).id);
}

async function everyPlan(address: string): Promise<string[]> {
  const ids: string[] = [];
  for (;;) {
    const before = ids.length > 0 ? `&before=${ids.at(-1)}` : '';
    const answer = await fetch(`${address}api/plans?limit=500${before}`);
    const { plans } = (await answer.json()) as { plans: { id: string }[] };
    ids.push(...plans.map(({ id }) => id));
    if (plans.length < 500) return ids;
  }
}
