/** Root of a continuous function inside a bracket: Chandrupatla 1997, Adv. Eng. Software 28:145 (interpolation guarded by bisection). */

const MAX_STEPS = 200;

/**
 * @param f continuous function with opposite signs (or a zero) at the ends
 * @param tolerance how near the root is wanted, in the unit of the argument
 * @throws RangeError when the ends do not bracket a root
 */
export function bracketedRoot(f: (x: number) => number, low: number, high: number, tolerance: number): number {
  // x1 is the newest point, the root lies between x1 and x2, x3 is the point dropped last.
  let [x1, x2] = [low, high];
  let [f1, f2] = [f(x1), f(x2)];
  if (f1 === 0) return x1;
  if (f2 === 0) return x2;
  if (Math.sign(f1) !== -Math.sign(f2)) throw new RangeError(`no root between ${low} and ${high}`);
  let share = 0.5;
  for (let step = 0; step < MAX_STEPS; step += 1) {
    const x = x1 + share * (x2 - x1);
    const fx = f(x);
    let [x3, f3] = [x1, f1];
    if (Math.sign(fx) === -Math.sign(f1)) {
      [x3, f3] = [x2, f2];
      [x2, f2] = [x1, f1];
    }
    [x1, f1] = [x, fx];
    const narrowest = tolerance / Math.abs(x2 - x1);
    if (narrowest > 0.5 || f1 === 0) break;
    const xi = (x1 - x2) / (x3 - x2);
    const phi = (f1 - f2) / (f3 - f2);
    const smooth = phi * phi < xi && (1 - phi) * (1 - phi) < 1 - xi;
    const inverse = (f1 / (f2 - f1)) * (f3 / (f2 - f3)) + ((x3 - x1) / (x2 - x1)) * (f1 / (f3 - f1)) * (f2 / (f3 - f2));
    share = Math.min(1 - narrowest, Math.max(narrowest, smooth ? inverse : 0.5));
  }
  return Math.abs(f1) < Math.abs(f2) ? x1 : x2;
}
