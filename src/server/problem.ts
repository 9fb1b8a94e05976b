/** Refusals and failures on their way out: everything that is thrown becomes one problem document (RFC 9457). */
import type { FastifyError, FastifyInstance, FastifyReply, FastifyRequest } from 'fastify';
import { fieldErrors } from '../api/fieldError.ts';
import type { Problem, ProblemKind } from '../api/problem.ts';
import { problemKinds } from '../api/problem.ts';
import { z } from '../api/zod.ts';
import { StorageFailing } from './cooking/logbook.ts';

/** When to come back after a refusal that will pass, s. */
const retryAfterS = 5;

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

export function answerWithProblems(app: FastifyInstance) {
  app.setErrorHandler((error, request, reply) => {
    const refusal = refusalFor(error as FastifyError);
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
  if (error.code === 'FST_ERR_CTP_INVALID_MEDIA_TYPE') {
    return new Refusal('json-only', 'Send the body as JSON, with `Content-Type: application/json`.');
  }
  if (/^(SQLITE_|ERR_SQLITE)/.test(error.code ?? '')) {
    return new Refusal('store-failed', 'The disk may be full or the data folder unwritable. Nothing was changed.');
  }
  if (error.statusCode !== undefined && error.statusCode < 500) return new Refusal('bad-request', error.message);
  return new Refusal('failed', 'What happened is in the log of the server.');
}
