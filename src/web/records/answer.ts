/** Questions to the server, and what became of them: an answer, a problem it names, or no server. */
import type { Problem } from '../../api/problem.ts';
import { ask } from './pass.ts';

/** The server refused or failed, and says why. */
export class ProblemError extends Error {
  override readonly name = 'ProblemError';
  readonly problem: Problem;

  constructor(problem: Problem) {
    super(problem.detail);
    this.problem = problem;
  }
}

interface Question {
  readonly method?: 'GET' | 'POST' | 'PUT' | 'DELETE';
  readonly headers?: Readonly<Record<string, string>>;
  readonly body?: unknown;
  /** Gives up when there is no answer by then, ms: as good as no server. */
  readonly patienceMs?: number;
}

/**
 * @returns the answer's body; undefined for one without
 * @throws ProblemError when the server says no, TypeError when it is not reached, a DOMException when patience ran out
 */
export async function answerTo<T>(
  address: string,
  { method = 'GET', headers = {}, body, patienceMs }: Question = {},
): Promise<T> {
  const answer = await ask(address, {
    method,
    headers: {
      accept: 'application/json',
      ...(body !== undefined && { 'content-type': 'application/json' }),
      ...headers,
    },
    ...(body !== undefined && { body: JSON.stringify(body) }),
    ...(patienceMs !== undefined && { signal: AbortSignal.timeout(patienceMs) }),
  });
  if (answer.status === 204) return undefined as T;
  const isJson = /json/.test(answer.headers.get('content-type') ?? '');
  // A proxy or another program at this address answers in its own way: as good as no server.
  if (!isJson) throw new TypeError(`${address} did not answer as Umberpan does`);
  const content: unknown = await answer.json();
  if (!answer.ok) throw new ProblemError(content as Problem);
  return content as T;
}
