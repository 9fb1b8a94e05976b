/** The dial as the simulated cook turned it: what a plan says of the dial in a step is read from its course, so that words and picture agree. */
import type { Course } from '../pan/course.ts';

/** A setting taken back sooner than this is a moment of the hand, not told, s. */
const shortestS = 30;
/** More changes than this are told as the span that they stay in. */
const mostTold = 3;

type Cooked = Pick<Course, 'steps' | 'deeds'>;

/** The settings of a step, one after the other, each in force for half a minute or more, and the last one; the heat off for the alkali is not among them. */
export function dialSettings({ steps, deeds }: Cooked, index: number): readonly number[] {
  const step = steps[index];
  if (!step) return [];
  const turns = deeds.flatMap(({ timeS, deed }) =>
    deed.kind === 'heat' && timeS >= step.startS && timeS < step.endS ? [{ timeS, notch: deed.notch }] : [],
  );
  const lasts = (i: number): number => (turns[i + 1]?.timeS ?? step.endS) - (turns[i]?.timeS ?? 0);
  return turns
    .filter(({ notch }, i) => notch > 0 && (i === turns.length - 1 || lasts(i) >= shortestS))
    .map(({ notch }) => notch)
    .filter((notch, i, all) => notch !== all[i - 1]);
}

/** `4`, `3, then 2`, or, when the cook turned it to and fro, `2, then 1-2`; `off` when there was no heat. */
export function dialText(cooked: Cooked, index: number): string {
  const [first, ...later] = dialSettings(cooked, index);
  if (first === undefined) return 'off';
  if (later.length < mostTold) return [first, ...later].join(', then ');
  return `${first}, then ${Math.min(...later)}-${Math.max(...later)}`;
}
