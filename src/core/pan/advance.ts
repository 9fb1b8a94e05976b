/** Carries a state forward over a stretch without deeds. */
import type { Pan } from './physics.ts';
import { createStepper, nextStep } from './rosenbrock.ts';
import { stateSize } from './state.ts';

const firstStepS = 2;
const longestStepS = 60;
const shortestStepS = 1e-3;

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
    h = Math.min(h, longestStepS, left);
    let error = stepper.step(y, f, h, next);
    while (!(error <= 1) && h > shortestStepS) {
      h = Math.max(shortestStepS, Math.min(nextStep(h, error), h / 2));
      error = stepper.step(y, f, h, next);
    }
    y.set(next);
    left -= h;
    h = nextStep(h, Math.max(error, 1e-6));
    pan.derivatives(y, f);
  }
}
