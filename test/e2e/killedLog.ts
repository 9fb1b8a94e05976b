// Kills a server while a cook is written to it, and looks afterwards whether all that it acknowledged is there, once.
import { setTimeout as pause } from 'node:timers/promises';
import type { StampedEvent } from '../../src/core/log/event.ts';
import { sampleBodies, sampleCook, sampleDevice } from '../sampleCook.ts';
import { startBuiltServer } from './builtServer.ts';

const writers = 4;

export interface KilledLog {
  readonly acknowledged: number;
  readonly kept: number;
  readonly lost: readonly string[];
  readonly doubled: number;
  /** Events kept without having been acknowledged: under way when the server was killed. */
  readonly unasked: number;
  readonly damaged: number;
}

export async function killWhileWriting(data: string, rounds: number): Promise<KilledLog> {
  const { cook, begun } = sampleCook();
  const acknowledged: string[] = [];
  for (let round = 0; round < rounds; round++) {
    const before = acknowledged.length;
    const server = await startBuiltServer(data);
    if (round === 0) await post(`${server.address}api/cooks`, begun);
    const url = `${server.address}api/cooks/${cook}/events`;
    const writing = Array.from({ length: writers }, (_, writer) => writeUntilItEnds(url, cook, writer, acknowledged));
    // Not before something was written, and then at another moment of the writing each time.
    while (acknowledged.length === before) await pause(1);
    await pause(5 + ((round * 37) % 150));
    await server.end('SIGKILL');
    await Promise.all(writing);
  }
  const server = await startBuiltServer(data);
  const kept = await everyEvent(`${server.address}api/cooks/${cook}/events`);
  const { damaged } = (await (await fetch(`${server.address}api/cooks/${cook}`)).json()) as { damaged: number[] };
  await server.end('SIGTERM');
  const ids = new Set(kept.filter(({ id }) => id !== begun.id).map(({ id }) => id));
  return {
    acknowledged: acknowledged.length,
    kept: kept.length - 1,
    lost: acknowledged.filter((id) => !ids.has(id)),
    doubled: kept.length - 1 - ids.size,
    unasked: ids.size - acknowledged.length,
    damaged: damaged.length,
  };
}

/** Single events and batches by turns. */
async function writeUntilItEnds(url: string, cook: string, writer: number, acknowledged: string[]) {
  const device = sampleDevice(cook);
  try {
    for (let count = 0; ; count++) {
      const batch = Array.from({ length: (count + writer) % 3 ? 1 : 7 }, () =>
        device.make('reading', sampleBodies.reading, count),
      );
      const answer = await post(url, batch);
      if (answer.status !== 201) throw new Error(`refused: ${await answer.text()}`);
      acknowledged.push(...((await answer.json()) as { id: string }[]).map(({ id }) => id));
    }
  } catch (error) {
    // The connection breaks when the server is killed; any other failure is one.
    if (!(error instanceof TypeError)) throw error;
  }
}

function post(url: string, body: object) {
  return fetch(url, { method: 'POST', headers: { 'content-type': 'application/json' }, body: JSON.stringify(body) });
}

async function everyEvent(url: string): Promise<StampedEvent[]> {
  const text = await (await fetch(url, { headers: { accept: 'application/x-ndjson' } })).text();
  return text
    .split('\n')
    .filter(Boolean)
    .map((line) => JSON.parse(line) as StampedEvent);
}
