/** Carries a state forward over a stretch without deeds. */
import type { Pan } from './physics.ts';
import { acceptedStep, createStepper } from './rosenbrock.ts';
import { stateSize } from './state.ts';

const firstStepS = 2;
const longestStepS = 60;

/**
 * Moves `y` forward by `seconds`, in place; the pan's view is that of the new y.
 *
 * @param tolerance relative error allowed in one step
 */
export function advance(pan: Pan, y: Float64Array, seconds: number, tolerance: number): void {
  const stepper = createStepper(pan, tolerance);
  const f = new Float64Array(stateSize);
  const next = new Float64Array(stateSize);
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
}
