/** Cooks laid over one another: each with the name it goes by there, and by how much its clock is moved. */
import type { Summary } from '../../../../core/book/summary.ts';
import type { StepKind } from '../../../../core/pan/steps.ts';
import type { Entry } from '../list/useBook.ts';

export interface Overlaid {
  readonly id: string;
  readonly name: string;
  readonly rehearsed: boolean;
  readonly begun: string;
  readonly summary: Summary;
}

/** By the clock, or by when a step began. */
export type Alignment = 'clock' | StepKind;

/** The cooks asked for that have a summary, in that order. */
export function overlaidOf(entries: readonly Entry[], ids: readonly string[]): readonly Overlaid[] {
  return ids.flatMap((id): readonly Overlaid[] => {
    const entry = entries.find(({ cook }) => cook.id === id);
    if (!entry?.summary) return [];
    const { name, mode, begun } = entry.cook;
    return [{ id, name, rehearsed: mode === 'rehearsal', begun, summary: entry.summary }];
  });
}

/** Steps that every one of them has. */
export function commonSteps(cooks: readonly Overlaid[]): readonly StepKind[] {
  const [first, ...rest] = cooks;
  if (!first) return [];
  const kinds = [...new Set(first.summary.steps.map(({ kind }) => kind))];
  return kinds.filter((kind) => rest.every(({ summary }) => summary.steps.some((step) => step.kind === kind)));
}

/** Time in a cook that stands at 0, s. */
export function zeroOf({ summary }: Overlaid, alignment: Alignment): number {
  return summary.steps.find(({ kind }) => kind === alignment)?.startS ?? 0;
}
