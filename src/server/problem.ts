/** Refusals and failures on their way out: everything that is thrown becomes one problem document (RFC 9457). */
import { randomUUID } from 'node:crypto';
import type { Socket } from 'node:net';
import type { FastifyError, FastifyInstance, FastifyReply, FastifyRequest } from 'fastify';
import { fieldErrors } from '../api/fieldError.ts';
import type { Problem, ProblemKind } from '../api/problem.ts';
import { problemKinds } from '../api/problem.ts';
import { z } from '../api/zod.ts';
import { StorageFailing } from './cooking/logbook.ts';

/** When to come back after a refusal that will pass, s, unless the refusal says. */
const usualRetryAfterS = 5;

declare module 'fastify' {
  interface FastifyContextConfig {
    /** Media types of a body that the route takes; JSON alone unless told. */
    readonly takes?: readonly string[];
  }
}

type More = Pick<Problem, 'errors' | 'yourVersion' | 'current'>;

/** Thrown by a handler or guard to refuse a request. */
export class Refusal extends Error {
  override readonly name = 'Refusal';
  readonly kind: ProblemKind;
  readonly more: More;
  readonly retryAfterS: number;

  constructor(kind: ProblemKind, detail: string, more: More = {}, retryAfterS = usualRetryAfterS) {
    super(detail);
    this.kind = kind;
    this.more = more;
    this.retryAfterS = retryAfterS;
  }
}

/** Refuses an address that no route can be looked up for; the framework asks before any hook or error handler is there. */
export function answerUnroutable(error: FastifyError, request: FastifyRequest, reply: FastifyReply) {
  const refusal =
    error.code === 'FST_ERR_MAX_PARAM_LENGTH'
      ? new Refusal('address-too-long', 'A part of the address is longer than any that is given out here.')
      : new Refusal('bad-request', 'The address can not be read: each % has to begin a byte of UTF-8 such as %20.');
  reply.header('x-content-type-options', 'nosniff').header('cache-control', 'no-store');
  return sendProblem(request, reply, refusal);
}

/**
 * Refuses what is no request yet: too slow, too long in its head, or not HTTP. There is nothing but the socket to answer on
 * (nodejs.org/api/http.html, event `clientError`).
 */
export function answerUnreadable(error: NodeJS.ErrnoException, socket: Socket) {
  if (!socket.writable || error.code === 'ECONNRESET') return socket.destroy();
  const refusal =
    error.code === 'ERR_HTTP_REQUEST_TIMEOUT'
      ? new Refusal('too-slow', 'The whole request has to come within 10 s, its head and its body.')
      : error.code === 'HPE_HEADER_OVERFLOW'
        ? new Refusal('headers-too-large', 'The head of a request may have up to 16 kB.')
        : new Refusal('bad-request', 'This is not HTTP as RFC 9112 wants it.');
  const { status, title } = problemKinds[refusal.kind];
  const body = JSON.stringify(problemOf(refusal, randomUUID()));
  const head = [
    `HTTP/1.1 ${status} ${title}`,
    'content-type: application/problem+json',
    `content-length: ${Buffer.byteLength(body)}`,
    'connection: close',
  ];
  return socket.end(`${head.join('\r\n')}\r\n\r\n${body}`);
}

export function answerWithProblems(app: FastifyInstance) {
  app.setErrorHandler((error, request, reply) => {
    const refusal = isMediaType(error) ? wrongMediaType(request, reply) : refusalFor(error as FastifyError);
    if (problemKinds[refusal.kind].status >= 500) request.log.error(error);
    return sendProblem(request, reply, refusal);
  });
}

export function sendProblem(request: FastifyRequest, reply: FastifyReply, refusal: Refusal) {
  const problem = problemOf(refusal, request.id);
  const { status } = problem;
  if (status === 503 || status === 429) reply.header('retry-after', String(refusal.retryAfterS));
  // RFC 6750, section 3.
  if (status === 401) reply.header('www-authenticate', 'Bearer');
  // As text, so that a route's own response schema is not asked about it.
  return reply.code(status).type('application/problem+json').send(JSON.stringify(problem));
}

function problemOf({ kind, message, more }: Refusal, id: string): Problem {
  const { status, title } = problemKinds[kind];
  return { type: `/api/problems#${kind}`, title, status, detail: message, instance: `urn:uuid:${id}`, ...more };
}

/** Fastify's and the drivers' own codes, in our kinds; anything unforeseen is `failed`, without its message. */
function refusalFor(error: FastifyError): Refusal {
  if (error instanceof Refusal) return error;
  if (error instanceof StorageFailing) return new Refusal('store-failed', error.message);
  if (error instanceof z.ZodError) {
    const errors = fieldErrors(error);
    return new Refusal('invalid-input', errors.map(({ message }) => message).join('. '), { errors });
  }
  if (error.code === 'FST_ERR_CTP_BODY_TOO_LARGE')
    return new Refusal('too-large', 'The body is larger than this address takes.');
  if (/^(SQLITE_|ERR_SQLITE)/.test(error.code ?? '')) {
    return new Refusal('store-failed', 'The disk may be full or the data folder unwritable. Nothing was changed.');
  }
  if (error.statusCode !== undefined && error.statusCode < 500) return new Refusal('bad-request', unreadable(error));
  return new Refusal('failed', 'What happened is in the log of the server.');
}

function isMediaType(error: unknown): boolean {
  return (error as FastifyError).code === 'FST_ERR_CTP_INVALID_MEDIA_TYPE';
}

/** Names what the route takes, also in `Accept` (RFC 9110, 15.5.16). */
function wrongMediaType({ headers, routeOptions }: FastifyRequest, reply: FastifyReply): Refusal {
  const { takes = ['application/json'] } = routeOptions.config;
  reply.header('accept', takes.join(', '));
  const given = headers['content-type'] ?? 'missing';
  return new Refusal('media-type', `Content-Type is ${given}; allowed: ${takes.join(', ')}.`);
}

/** Of a request that is wrong before any field of it was looked at. */
function unreadable({ code, name }: FastifyError): string {
  if (code === 'FST_ERR_CTP_EMPTY_JSON_BODY') return 'The body is empty; it has to be JSON.';
  if (code === 'FST_ERR_CTP_INVALID_JSON_BODY' || name === 'SyntaxError') {
    return 'The body is not JSON, or names a field that no JSON may have here (`__proto__`, `constructor`).';
  }
  if (code === 'FST_ERR_CTP_INVALID_CONTENT_LENGTH') return 'The body is not as long as `Content-Length` says.';
  return 'The request is not as HTTP wants it.';
}
