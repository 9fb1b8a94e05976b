/** Several smooth functions of one variable, sampled at equal distances and read back together by cubic Hermite interpolation. */

export interface Curves {
  readonly count: number;
  /** Writes the value of each function at `x` to `out`; outside the samples the nearest end is used. */
  read(x: number, out: Float64Array): void;
}

/** A function to sample, with its derivative. */
export interface Sampled {
  readonly value: (x: number) => number;
  readonly slope: (x: number) => number;
}

/** Derivative by central difference, for functions without a simple one; `step` in the units of x. */
export function slopeOf(value: (x: number) => number, step: number): (x: number) => number {
  return (x) => (value(x + step) - value(x - step)) / (2 * step);
}

/** Samples `functions` from `low` to `high` every `step`. Error is about step^4/384 times the fourth derivative. */
export function sampleCurves(functions: readonly Sampled[], low: number, high: number, step: number): Curves {
  const count = functions.length;
  const intervals = Math.round((high - low) / step);
  const row = 2 * count;
  const samples = new Float64Array((intervals + 1) * row);
  for (let i = 0; i <= intervals; i++) {
    const x = low + i * step;
    functions.forEach((f, j) => {
      samples[i * row + j] = f.value(x);
      samples[i * row + count + j] = f.slope(x) * step;
    });
  }
  return {
    count,
    read(x, out) {
      const position = Math.min(intervals, Math.max(0, (x - low) / step));
      const i = Math.min(intervals - 1, Math.floor(position));
      const u = position - i;
      const v = 1 - u;
      const left = v * v * (1 + 2 * u);
      const leftSlope = u * v * v;
      const right = u * u * (3 - 2 * u);
      const rightSlope = -u * u * v;
      for (let j = 0, at = i * row; j < count; j++, at++) {
        out[j] =
          left * samples[at] +
          leftSlope * samples[at + count] +
          right * samples[at + row] +
          rightSlope * samples[at + row + count];
      }
    },
  };
}
