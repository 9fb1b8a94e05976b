/** Refusals and failures on their way out: everything that is thrown becomes one problem document (RFC 9457). */
import type { FastifyError, FastifyInstance, FastifyReply, FastifyRequest } from 'fastify';
import { fieldErrors } from '../api/fieldError.ts';
import type { Problem, ProblemKind } from '../api/problem.ts';
import { problemKinds } from '../api/problem.ts';
import { z } from '../api/zod.ts';
import { StorageFailing } from './cooking/logbook.ts';

/** When to come back after a refusal that will pass, s. */
const retryAfterS = 5;

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

  constructor(kind: ProblemKind, detail: string, more: More = {}) {
    super(detail);
    this.kind = kind;
    this.more = more;
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

export function answerWithProblems(app: FastifyInstance) {
  app.setErrorHandler((error, request, reply) => {
    const refusal = isMediaType(error) ? wrongMediaType(request, reply) : refusalFor(error as FastifyError);
    if (problemKinds[refusal.kind].status >= 500) request.log.error(error);
    return sendProblem(request, reply, refusal);
  });
}

export function sendProblem(request: FastifyRequest, reply: FastifyReply, { kind, message, more }: Refusal) {
  const { status, title } = problemKinds[kind];
  const problem: Problem = {
    type: `/api/problems#${kind}`,
    title,
    status,
    detail: message,
    instance: `urn:uuid:${request.id}`,
    ...more,
  };
  if (status === 503 || status === 429) reply.header('retry-after', String(retryAfterS));
  // As text, so that a route's own response schema is not asked about it.
  return reply.code(status).type('application/problem+json').send(JSON.stringify(problem));
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
