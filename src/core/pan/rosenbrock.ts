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
  /** Prepares to solve (d I - J) x = r, with J the linearised stiff block at `y`. */
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
const { a, c, m, e } = transformed();

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
  const solution = timesInverse(weights);
  const lower = timesInverse(embedded);
  return {
    a: alpha.map(timesInverse),
    c: inverse.map((row, i) => row.map((value, j) => (j < i ? -value : 0))),
    m: solution,
    e: solution.map((value, i) => value - lower[i]),
  };
}

export interface Stepper {
  /** Tries one step of length h from y with its derivative f; writes the new y to `next` and returns the error (1 = just acceptable). */
  step(y: Float64Array, f: Float64Array, h: number, next: Float64Array): number;
}

/**
 * @param tolerance relative error allowed in one step
 */
export function createStepper(system: System, tolerance: number): Stepper {
  const { size, scale } = system;
  const u = [0, 1, 2, 3].map(() => new Float64Array(size));
  const at = new Float64Array(scale.length);
  const fAt = new Float64Array(size);

  return {
    step(y, f, h, next) {
      system.factor(y, 1 / (gamma * h));
      at.set(y);
      for (let stage = 0; stage < 4; stage++) {
        const ui = u[stage];
        if (stage > 0) {
          const [a0, a1, a2] = a[stage];
          for (let i = 0; i < size; i++) {
            let value = y[i] + a0 * u[0][i];
            if (stage > 1) value += a1 * u[1][i];
            if (stage > 2) value += a2 * u[2][i];
            at[i] = value;
          }
          system.derivatives(at, fAt);
          const [c0, c1, c2] = c[stage];
          for (let i = 0; i < size; i++) {
            let sum = c0 * u[0][i];
            if (stage > 1) sum += c1 * u[1][i];
            if (stage > 2) sum += c2 * u[2][i];
            ui[i] = fAt[i] + sum / h;
          }
        } else {
          for (let i = 0; i < size; i++) ui[i] = f[i];
        }
        system.solve(ui);
      }
      let worst = 0;
      next.set(y);
      for (let i = 0; i < size; i++) {
        next[i] = y[i] + m[0] * u[0][i] + m[1] * u[1][i] + m[2] * u[2][i] + m[3] * u[3][i];
        const error = Math.abs(e[0] * u[0][i] + e[1] * u[1][i] + e[2] * u[2][i] + e[3] * u[3][i]);
        const allowed = tolerance * (scale[i] + Math.max(Math.abs(y[i]), Math.abs(next[i])));
        if (!(error <= worst * allowed)) worst = Number.isFinite(error) ? error / allowed : Number.POSITIVE_INFINITY;
      }
      return worst;
    },
  };
}

/** Length of the next step from the error of the last. */
export function nextStep(h: number, error: number): number {
  return h * Math.min(4, Math.max(0.2, 0.85 * error ** (-1 / 3)));
}

/** Value between two points with known slopes: cubic Hermite, u from 0 to 1 over a step of length h. */
export function between(y0: number, f0: number, y1: number, f1: number, h: number, u: number): number {
  const v = 1 - u;
  return v * v * (1 + 2 * u) * y0 + u * u * (3 - 2 * u) * y1 + h * u * v * (v * f0 - u * f1);
}
