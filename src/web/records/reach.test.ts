import { expect, it } from 'vitest';
import type { Problem } from '../../api/problem.ts';
import { ProblemError } from './answer.ts';
import { reachOf } from './reach.ts';

const problem = (status: number, kind = 'failed') =>
  new ProblemError({ status, type: `/api/problems#${kind}`, detail: '' } as Problem);

it.each([
  ['reached', null],
  ['reached', problem(404)],
  ['reached', problem(403)],
  ['not let in', problem(401)],
  ['not shared', problem(403, 'not-shared')],
  ['away', problem(503)],
  ['away', new TypeError('fetch failed')],
  ['away', new DOMException('too late', 'TimeoutError')],
])('the server is %s after %s', (reach, failure) => {
  expect(reachOf(failure)).toBe(reach);
});
