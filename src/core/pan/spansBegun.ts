/** The steps of a cook as far as they were begun, in the form that pan lines draw. */
import type { StepSpan } from './course.ts';
import type { Step, TimedDeed } from './steps.ts';

/** A step told twice began once. */
export function spansBegun(
  steps: readonly Step[],
  deeds: readonly TimedDeed[],
  endS: number,
): (StepSpan & { readonly index: number })[] {
  const begun = [
    { index: 0, startS: 0 },
    ...deeds.flatMap(({ timeS, deed }) => (deed.kind === 'step' ? [{ index: deed.index, startS: timeS }] : [])),
  ].filter(({ index }, i, all) => index !== all[i - 1]?.index);
  return begun.flatMap(({ index, startS }, i) => {
    const step = steps[index];
    return step ? [{ index, kind: step.kind, startS, endS: begun[i + 1]?.startS ?? endS, spoonfuls: 0 }] : [];
  });
}
