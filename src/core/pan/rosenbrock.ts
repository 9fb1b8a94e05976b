/**
 * Integrator for a pan: a Rosenbrock-W method of order 3(2) with four stages (ROS34PW2; Rang & Angermann 2005, BIT 45:761;
 * coefficients from memory, checked by a measured order of convergence). W-methods stay of order 3 with any Jacobian, so only the
 * stiff block (ring, pan, heat, water, thermometer) is linearised and the chemistry goes through as in an explicit method.
 */

export interface System {
  /** Number of values that change by themselves. */
  readonly size: number;
  /** Typical size of each value, for the error norm. */
  readonly scale: Float64Array;
  derivatives(y: Float64Array, dy: Float64Array): void;
  /** Prepares to solve (d I - J) x = r, with J the stiff block linearised at `y` or at the state evaluated last. */
  factor(y: Float64Array, d: number): void;
  /** Replaces r by x. */
  solve(r: Float64Array): void;
}

const gamma = 0.435866521508459;
const alpha = [[], [0.871733043016918], [0.844570600153694, -0.112990642363484], [0, 0, 1]];
const gammas = [
  [],
  [-0.871733043016918],
  [-0.903380570130441, 0.054180672388095],
  [0.242123807060953, -1.223250583904515, 0.545260255335102],
];
const weights = [0.242123807060954, -1.223250583904515, 1.545260255335102, 0.435866521508459];
const embedded = [0.378109031458194, -0.096042292212423, 0.5, 0.217933260754229];

/** The method in terms of u = Gamma k, which needs no products with J (Hairer & Wanner, Solving ODEs II, IV.7). */
const { a, c, e } = transformed();

function transformed() {
  const stages = 4;
  // Inverse of the lower-triangular matrix Gamma (diagonal gamma).
  const inverse = Array.from({ length: stages }, () => new Array<number>(stages).fill(0));
  for (let j = 0; j < stages; j++) {
    inverse[j][j] = 1 / gamma;
    for (let i = j + 1; i < stages; i++) {
      let sum = 0;
      for (let k = j; k < i; k++) sum += gammas[i][k] * inverse[k][j];
      inverse[i][j] = -sum / gamma;
    }
  }
  const timesInverse = (row: readonly number[]) =>
    inverse.map((_, j) => row.reduce((sum, value, i) => sum + value * inverse[i][j], 0));
  return {
    a: alpha.map(timesInverse),
    c: inverse.map((row, i) => row.map((value, j) => (j < i ? -value : 0))),
    e: timesInverse(weights.map((weight, i) => weight - embedded[i])),
  };
}

/** Scratch for the stages of a step. Steppers whose steps are taken one after the other may share it. */
export interface StageRoom {
  readonly stages: readonly [Float64Array, Float64Array, Float64Array, Float64Array];
  readonly at: Float64Array;
}

/** @param length of the whole state, with the values that do not move */
export function createStageRoom(length: number): StageRoom {
  const one = (): Float64Array => new Float64Array(length);
  return { stages: [one(), one(), one(), one()], at: one() };
}

export interface Stepper {
  /** Tries one step of length h from y with its derivative f; writes the new y to `next` and returns the error (1 = just acceptable). */
  step(y: Float64Array, f: Float64Array, h: number, next: Float64Array): number;
}

/**
 * @param tolerance relative error allowed in one step
 * @param room scratch of the state's length; making it takes a fifth of the time of an ensemble moved on by ten seconds
 */
export function createStepper(
  system: System,
  tolerance: number,
  room: StageRoom = createStageRoom(system.scale.length),
): Stepper {
  const { size, scale } = system;
  const {
    stages: [u1, u2, u3, u4],
    at,
  } = room;
  const [, [a21], [a31, a32], [a41, a42, a43]] = a;
  const [, [c21], [c31, c32], [c41, c42, c43]] = c;
  const [e1, e2, e3, e4] = e;

  // The stages are written out: loops over them would take half of the time of a simulation.
  return {
    step(y, f, h, next) {
      const perH = 1 / h;
      system.factor(y, perH / gamma);
      for (let i = size; i < at.length; i++) next[i] = at[i] = y[i];

      for (let i = 0; i < size; i++) u1[i] = f[i];
      system.solve(u1);

      for (let i = 0; i < size; i++) at[i] = y[i] + a21 * u1[i];
      system.derivatives(at, u2);
      for (let i = 0; i < size; i++) u2[i] += perH * c21 * u1[i];
      system.solve(u2);

      for (let i = 0; i < size; i++) at[i] = y[i] + a31 * u1[i] + a32 * u2[i];
      system.derivatives(at, u3);
      for (let i = 0; i < size; i++) u3[i] += perH * (c31 * u1[i] + c32 * u2[i]);
      system.solve(u3);

      for (let i = 0; i < size; i++) at[i] = y[i] + a41 * u1[i] + a42 * u2[i] + a43 * u3[i];
      system.derivatives(at, u4);
      for (let i = 0; i < size; i++) u4[i] += perH * (c41 * u1[i] + c42 * u2[i] + c43 * u3[i]);
      system.solve(u4);

      let worst = 0;
      for (let i = 0; i < size; i++) {
        // The method is stiffly accurate: the weights are the last stage's, so the new y is one u further.
        next[i] = at[i] + u4[i];
        const error = Math.abs(e1 * u1[i] + e2 * u2[i] + e3 * u3[i] + e4 * u4[i]);
        const allowed = tolerance * (scale[i] + Math.max(Math.abs(y[i]), Math.abs(next[i])));
        if (!(error <= worst * allowed)) worst = Number.isFinite(error) ? error / allowed : Number.POSITIVE_INFINITY;
      }
      // The stiff block is linearised about the state evaluated last: that must be one that exists, or every shorter step fails as well.
      if (worst === Number.POSITIVE_INFINITY) system.derivatives(y, u2);
      return worst;
    },
  };
}

/** Length of the next step from the error of the last. */
export function nextStep(h: number, error: number): number {
  return h * Math.min(4, Math.max(0.2, 0.9 / Math.cbrt(error)));
}

/** Below this a step is taken as it is: the equations change no faster, s. */
export const shortestStepS = 1e-3;

/** Steps from y, shorter and shorter until the error is allowed; returns the length taken and the length to try next. */
export function acceptedStep(
  stepper: Stepper,
  y: Float64Array,
  f: Float64Array,
  wantedS: number,
  next: Float64Array,
): { readonly takenS: number; readonly nextS: number } {
  let h = wantedS;
  let error = stepper.step(y, f, h, next);
  while (error > 1 && h > shortestStepS) {
    h = Math.max(shortestStepS, Math.min(nextStep(h, error), h / 2));
    error = stepper.step(y, f, h, next);
  }
  return { takenS: h, nextS: Math.max(shortestStepS, nextStep(h, Math.max(error, 1e-6))) };
}

/** Value between two points with known slopes: cubic Hermite, u from 0 to 1 over a step of length h. */
export function between(y0: number, f0: number, y1: number, f1: number, h: number, u: number): number {
  const v = 1 - u;
  return v * v * (1 + 2 * u) * y0 + u * u * (3 - 2 * u) * y1 + h * u * v * (v * f0 - u * f1);
}
