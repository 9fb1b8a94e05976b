// A server that listens on a port of this machine, and a client that follows a cook there.
import { onTestFinished } from 'vitest';
import type { StampedEvent } from '../src/core/log/event.ts';
import { buildServer, type ServerOptions } from '../src/server/server.ts';
import { openStore } from '../src/server/store/store.ts';

/** Starts a server on a data folder; both end with the test, or when told. */
export async function listeningServer(folder: string, options: Partial<ServerOptions> = {}) {
  const store = await openStore(folder);
  const app = await buildServer({ store, pages: folder, beatMs: 50, retryMs: 100, ...options });
  const address = await app.listen({ host: '127.0.0.1', port: 0 });
  let running = true;
  const stop = async () => {
    if (!running) return;
    running = false;
    await app.close();
    await store.close();
  };
  onTestFinished(stop);
  return { app, store, address, stop };
}

export interface Message {
  readonly event: string;
  readonly id: string | undefined;
  readonly data: unknown;
}

/** Follows a stream of server-sent events until it is left or breaks. */
export async function follow(url: string, lastEventId?: number, headers: Readonly<Record<string, string>> = {}) {
  const leaving = new AbortController();
  const answer = await fetch(url, {
    signal: leaving.signal,
    headers: { ...headers, ...(lastEventId !== undefined && { 'last-event-id': String(lastEventId) }) },
  });
  const messages: Message[] = [];
  const ended = read(answer, messages).catch(() => {});
  const leave = async () => {
    leaving.abort();
    await ended;
  };
  onTestFinished(leave);
  const all = (event: string) => messages.filter((message) => message.event === event);
  return {
    answer,
    messages,
    all,
    ended,
    leave,
    logged: () => all('logged').map(({ data }) => data as StampedEvent),
    /** Waits until the condition holds. */
    async until(condition: () => boolean, forMs = 5000) {
      const late = performance.now() + forMs;
      while (!condition()) {
        if (performance.now() > late)
          throw new Error(`after ${forMs} ms there came only ${JSON.stringify(messages.slice(-5))}`);
        await new Promise((resolve) => setTimeout(resolve, 2));
      }
    },
  };
}

async function read(answer: Response, messages: Message[]) {
  const decoder = new TextDecoder();
  let text = '';
  for await (const chunk of answer.body as ReadableStream<Uint8Array>) {
    text += decoder.decode(chunk, { stream: true });
    const blocks = text.split('\n\n');
    text = blocks.pop() ?? '';
    for (const block of blocks) {
      const field = (name: string) => new RegExp(`^${name}: (.*)$`, 'm').exec(block)?.[1];
      const [event, data] = [field('event'), field('data')];
      if (event && data) messages.push({ event, id: field('id'), data: JSON.parse(data) });
    }
  }
}
