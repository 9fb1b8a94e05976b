/** Square roots of covariances: Cholesky's factor of a symmetric positive matrix, stored row by row, and solving with it. */

/**
 * The lower triangle L with L L' = matrix (Golub & Van Loan 2013, Matrix Computations, algorithm 4.2.1).
 *
 * @throws RangeError when the matrix is not positive definite
 */
export function cholesky(matrix: ArrayLike<number>, n: number): Float64Array {
  const lower = new Float64Array(n * n);
  for (let i = 0; i < n; i++) {
    for (let j = 0; j <= i; j++) {
      let sum = matrix[i * n + j];
      for (let k = 0; k < j; k++) sum -= lower[i * n + k] * lower[j * n + k];
      if (i !== j) lower[i * n + j] = sum / lower[j * n + j];
      else if (sum > 0) lower[i * n + i] = Math.sqrt(sum);
      else throw new RangeError(`the matrix is not positive definite: pivot ${i} is ${sum}; allowed: above 0`);
    }
  }
  return lower;
}

/** x with L x = b. */
export function solveLower(lower: Float64Array, b: ArrayLike<number>): Float64Array {
  const n = b.length;
  const x = Float64Array.from(b);
  for (let i = 0; i < n; i++) {
    for (let k = 0; k < i; k++) x[i] -= lower[i * n + k] * x[k];
    x[i] /= lower[i * n + i];
  }
  return x;
}

/** x with L' x = b. */
export function solveTransposed(lower: Float64Array, b: ArrayLike<number>): Float64Array {
  const n = b.length;
  const x = Float64Array.from(b);
  for (let i = n - 1; i >= 0; i--) {
    for (let k = i + 1; k < n; k++) x[i] -= lower[k * n + i] * x[k];
    x[i] /= lower[i * n + i];
  }
  return x;
}

/** L x. */
export function timesLower(lower: Float64Array, x: ArrayLike<number>): Float64Array {
  const n = x.length;
  const out = new Float64Array(n);
  for (let i = 0; i < n; i++) for (let k = 0; k <= i; k++) out[i] += lower[i * n + k] * x[k];
  return out;
}
