/** A stream of server-sent events over one answer (HTML Standard, section 9.2). */
import type { FastifyReply } from 'fastify';

/** A client that lets this much pile up is cut off; it comes back and gets what it missed, bytes. */
const mostWaiting = 16e6;
/** When a browser comes back after a break, ms. */
const retryMs = 500;

export interface EventStream {
  /** @param id what the client names when it comes back */
  send(event: string, data: unknown, id?: number): void;
  onEnd(work: () => void): void;
  /** Cuts the client off; it comes back. */
  breakOff(): void;
}

/** Takes the answer over from the framework: it stays open until the client or the server goes. */
export function openEventStream(reply: FastifyReply): EventStream {
  reply.hijack();
  const { raw } = reply;
  raw.writeHead(200, {
    ...(reply.getHeaders() as Record<string, string>),
    'content-type': 'text/event-stream; charset=utf-8',
    'cache-control': 'no-store',
    'x-accel-buffering': 'no',
  });
  raw.write(`retry: ${retryMs}\n\n`);
  return {
    send(event, data, id) {
      if (raw.destroyed) return;
      const place = id === undefined ? '' : `id: ${id}\n`;
      raw.write(`event: ${event}\n${place}data: ${JSON.stringify(data)}\n\n`);
      if (raw.writableLength > mostWaiting) raw.destroy();
    },
    onEnd: (work) => raw.once('close', work),
    breakOff: () => raw.destroy(),
  };
}
