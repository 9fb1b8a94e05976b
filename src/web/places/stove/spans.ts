/** The steps of a rehearsal as far as they were begun, in the form that pan lines draw. */
import type { StepSpan } from '../../../core/pan/course.ts';
import type { Step, TimedDeed } from '../../../core/pan/steps.ts';

export function spansOf(steps: readonly Step[], deeds: readonly TimedDeed[], endS: number): StepSpan[] {
  const starts = [0, ...deeds.flatMap(({ timeS, deed }) => (deed.kind === 'step' ? [timeS] : []))];
  return starts.flatMap((startS, i) => {
    const step = steps[i];
    return step ? [{ kind: step.kind, startS, endS: starts[i + 1] ?? endS, spoonfuls: 0 }] : [];
  });
}
