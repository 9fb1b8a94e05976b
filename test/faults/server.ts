// A server as a process of its own with one cook under way, and a device that sends to it.
import { setTimeout as pause } from 'node:timers/promises';
import type { EventKind } from '../../src/core/log/bodies.ts';
import type { EventOf } from '../../src/core/log/event.ts';
import { sampleBodies, sampleCook, sampleDevice } from '../sampleCook.ts';
import { type Child, startChild } from './child.ts';

export interface Served {
  readonly child: Child;
  readonly cook: string;
  /** Sends the next reading; gives its id and what came of it. */
  send(): Promise<{ readonly id: string; readonly status: number }>;
  /** Sends the reading again. */
  again(id: string): Promise<number>;
  events(): Promise<
    readonly { readonly id: string; readonly seq: number; readonly tServer: string; readonly kind: string }[]
  >;
}

/** @param before a program that runs the server, such as strace with its options */
export async function serve(folder: string, before: readonly string[] = []): Promise<Served> {
  const child = await startChild('serve', folder, before);
  await child.said(1);
  const [address = ''] = child.lines;
  const { cook, begun } = sampleCook(0);
  const device = sampleDevice(cook);
  const post = (path: string, body: object) =>
    fetch(address + path, {
      method: 'POST',
      headers: { 'content-type': 'application/json' },
      body: JSON.stringify(body),
    });
  const began = await post('/api/cooks', begun);
  if (began.status !== 201) throw new Error(`the cook did not begin: ${await began.text()}`);
  const made = new Map<string, EventOf<EventKind>>();
  const url = `/api/cooks/${cook}/events`;
  const status = async (event: object) => {
    const answer = await post(url, event);
    await answer.arrayBuffer();
    return answer.status;
  };
  return {
    child,
    cook,
    async send() {
      const event = device.make('reading', sampleBodies.reading, made.size);
      made.set(event.id, event);
      return { id: event.id, status: await status(event) };
    },
    again: (id) => status(made.get(id) as object),
    async events() {
      const { events } = (await (await fetch(address + url)).json()) as Awaited<{
        events: Awaited<ReturnType<Served['events']>>;
      }>;
      return events;
    },
  };
}

/** Asks again and again until it is so. */
export async function until(what: string, isSo: () => Promise<boolean> | boolean, forMs = 20_000): Promise<void> {
  const late = performance.now() + forMs;
  while (!(await isSo())) {
    if (performance.now() > late) throw new Error(`after ${forMs} ms it is still not so: ${what}`);
    await pause(20);
  }
}
