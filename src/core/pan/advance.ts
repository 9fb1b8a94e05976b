/** Carries a state forward over a stretch without deeds. */
import type { Pan } from './physics.ts';
import { acceptedStep, createStageRoom, createStepper } from './rosenbrock.ts';
import { stateSize } from './state.ts';

/** A twin goes on by ten seconds, which one step mostly covers; a step found too long costs little against two. */
const usualFirstStepS = 10;
const longestStepS = 60;

/** Scratch of every call, written before it is read: an ensemble makes a hundred thousand calls in a cook. */
const room = createStageRoom(stateSize);
const f = new Float64Array(stateSize);
const next = new Float64Array(stateSize);

/**
 * Moves `y` forward by `seconds`, in place; the pan's view is that of the new y.
 *
 * @param tolerance relative error allowed in one step
 * @param firstStepS tried first: after a stretch without a deed at its end, what that stretch returned
 * @returns the step to try next, s
 */
export function advance(
  pan: Pan,
  y: Float64Array,
  seconds: number,
  tolerance: number,
  firstStepS = usualFirstStepS,
): number {
  const stepper = createStepper(pan, tolerance, room);
  let left = seconds;
  let h = firstStepS;
  pan.derivatives(y, f);
  while (left > 1e-9) {
    const { takenS, nextS } = acceptedStep(stepper, y, f, Math.min(h, longestStepS, left), next);
    y.set(next);
    left -= takenS;
    h = nextS;
    pan.derivatives(y, f);
  }
  return h;
}
