/** Whether the server's records are to be had here, told from what a question to it came to. */
import { ProblemError } from './answer.ts';

export type Reach = 'reached' | 'away' | 'not let in' | 'not shared';

/** @param failure of the question, if it failed. That there is no such record, or none for this device, is an answer. */
export function reachOf(failure: unknown): Reach {
  if (!failure) return 'reached';
  if (isNotLetIn(failure)) return 'not let in';
  if (isNotShared(failure)) return 'not shared';
  return failure instanceof ProblemError && failure.problem.status < 500 ? 'reached' : 'away';
}

/** One cook was shared with this device, and this is something else. */
export function isNotShared(failure: unknown): boolean {
  return failure instanceof ProblemError && failure.problem.type === '/api/problems#not-shared';
}

/** The server is there and does not know this device: it was never paired, or was let out. */
export function isNotLetIn(failure: unknown): boolean {
  return failure instanceof ProblemError && failure.problem.status === 401;
}
