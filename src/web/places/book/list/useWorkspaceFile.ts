/** Puts the file of a whole workspace in the place of what the server keeps: asks first where anything is kept. */
import { useMutation, useQueryClient } from '@tanstack/react-query';
import type { Problem } from '../../../../api/problem.ts';
import { ProblemError } from '../../../records/answer.ts';
import { failureOf } from '../../../records/failureOf.ts';
import { ask } from '../../../records/pass.ts';

/** As much as the server takes of it; more goes by the command line. */
const mostMB = 200;

export type PutIn =
  | { readonly kind: 'in'; readonly rows: number; readonly changed: boolean }
  /** The file is in order; what is here and what is in it, in words. */
  | { readonly kind: 'ask'; readonly file: File; readonly what: string }
  | { readonly kind: 'refused'; readonly why: string };

export function useWorkspaceFile() {
  const client = useQueryClient();
  return useMutation({
    mutationFn: async ({ file, mayReplace }: { file: File; mayReplace: boolean }): Promise<PutIn> => {
      const nothing = `Nothing was put in from “${file.name}”`;
      if (file.size > mostMB * 1e6) {
        return { kind: 'refused', why: `${nothing}: it is larger than ${mostMB} MB; umberpan restore takes it in.` };
      }
      try {
        return { kind: 'in', ...(await put(file, mayReplace)) };
      } catch (error) {
        const problem = error instanceof ProblemError ? error.problem : undefined;
        if (problem?.type.endsWith('#things-kept')) return { kind: 'ask', file, what: problem.detail };
        // Of these the server's own words say most.
        const isTold = problem?.errors !== undefined || problem?.type.endsWith('#cook-under-way');
        if (problem && isTold) return { kind: 'refused', why: `“${file.name}” was refused: ${problem.detail}` };
        return { kind: 'refused', why: failureOf(error, nothing) };
      }
    },
    // Nothing that was on show needs to be there any more.
    onSuccess: (done) => (done.kind === 'in' && done.changed ? client.invalidateQueries() : undefined),
  });
}

async function put(file: File, mayReplace: boolean): Promise<{ readonly rows: number; readonly changed: boolean }> {
  const headers = { accept: 'application/json', 'content-type': 'application/json' };
  const answer = await ask(`/api/workspace?replace=${mayReplace}`, { method: 'PUT', headers, body: file });
  const said: unknown = await answer.json();
  if (!answer.ok) throw new ProblemError(said as Problem);
  return said as { rows: number; changed: boolean };
}
