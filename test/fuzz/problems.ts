// What a refusal of the server has to look like, whatever it refuses.
import { expect } from 'vitest';
import { type Problem, problemKinds } from '../../src/api/problem.ts';

interface Answer {
  readonly statusCode: number;
  readonly headers: Readonly<Record<string, unknown>>;
  readonly payload: string;
}

/** A known problem in words, that names each field that it refuses. */
export function expectProblem({ statusCode, headers, payload }: Answer): Problem {
  expect(headers['content-type']).toMatch(/^application\/problem\+json/);
  const problem = JSON.parse(payload) as Problem;
  const kind = problem.type.replace('/api/problems#', '') as keyof typeof problemKinds;
  expect(problemKinds[kind]?.status).toBe(statusCode);
  expect(statusCode).toBeLessThan(500);
  expect(problem.detail).not.toBe('');
  if (kind === 'invalid-input') {
    expect(problem.errors?.length).toBeGreaterThan(0);
    for (const { field, message } of problem.errors ?? []) expect(message).toContain(field || 'the input');
  }
  return problem;
}
