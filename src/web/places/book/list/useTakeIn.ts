/** Takes in a file that another Umberpan passed on: all of it, or nothing. */
import { useMutation, useQueryClient } from '@tanstack/react-query';
import type { PlanRecord } from '../../../../api/plan.ts';
import type { Problem } from '../../../../api/problem.ts';
import { ProblemError } from '../../../records/answer.ts';
import { failureOf } from '../../../records/failureOf.ts';
import { newId } from '../../../records/newId.ts';
import { ask } from '../../../records/pass.ts';
import { useSavePlan } from '../../../records/usePlans.ts';
import type { PassedOn } from './passedOn.ts';

/** As much as the server takes of a cook's file. */
const mostMB = 25;

interface TakenCook {
  readonly kind: 'cook';
  readonly cook: string;
  readonly events: number;
  /** Events that were not here before. */
  readonly new: number;
}

export type TakenIn =
  | TakenCook
  | { readonly kind: 'plan'; readonly plan: PlanRecord }
  | { readonly kind: 'refused'; readonly why: string };

export function useTakeIn() {
  const client = useQueryClient();
  const { mutateAsync: save } = useSavePlan();
  return useMutation({
    mutationFn: async (file: File): Promise<TakenIn> => {
      const nothing = `Nothing was taken from “${file.name}”`;
      try {
        const passed = await readPassedOn(file);
        if (passed.kind === 'refused') return { kind: 'refused', why: `${nothing}: ${passed.why}.` };
        if (passed.kind === 'cook') return await takeCook(file);
        // What was cooked on stays with who cooked: here it is planned for the kitchen on the Desk.
        const plan = await save({ id: newId(), plan: { kitId: null, request: passed.request } });
        return { kind: 'plan', plan };
      } catch (error) {
        return { kind: 'refused', why: whyNot(error, nothing) };
      }
    },
    // A cook is seen in many places: in lists, in what a kit learned from, by itself.
    onSuccess: ({ kind }) => (kind === 'cook' ? client.invalidateQueries() : undefined),
  });
}

async function readPassedOn(file: File): Promise<PassedOn> {
  if (file.size > mostMB * 1024 * 1024) {
    return { kind: 'refused', why: `it is too large; allowed: up to ${mostMB} MB` };
  }
  const text = await file.text().catch(() => undefined);
  if (text === undefined) return { kind: 'refused', why: 'it can’t be read' };
  // Schemas are heavy, and most who open the Book take nothing in.
  const { passedOn } = await import('./passedOn.ts');
  return passedOn(text);
}

/** The file goes as it is, byte by byte: its hash is of those. */
async function takeCook(file: File): Promise<TakenCook> {
  const headers = { accept: 'application/json', 'content-type': 'application/x-ndjson' };
  const answer = await ask('/api/cooks/import', { method: 'POST', headers, body: file });
  const said: unknown = await answer.json();
  if (!answer.ok) throw new ProblemError(said as Problem);
  return { kind: 'cook', ...(said as Omit<TakenCook, 'kind'>) };
}

/** Of a line or a field that is not as it should be, the server's own words say most. */
function whyNot(error: unknown, nothing: string): string {
  if (error instanceof ProblemError && error.problem.errors) return `${nothing}: ${error.problem.detail}.`;
  return failureOf(error, nothing);
}
