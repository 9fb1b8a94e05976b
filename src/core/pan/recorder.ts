/** Keeps what the integrator passes through, and reads it back at equal times. */
import type { Pan } from './physics.ts';
import { between } from './rosenbrock.ts';
import { movingCount, stateSize } from './state.ts';

/** Beside the state, at each point kept: temperature, its slope, pH, boiling temperature, steam. */
const extras = 5;
const width = 1 + stateSize + movingCount + extras;
const slopesAt = 1 + stateSize;
const extrasAt = slopesAt + movingCount;

export interface Sampled {
  readonly timeS: Float64Array;
  readonly states: Float64Array[];
  readonly temperatureC: Float64Array;
  readonly ph: Float64Array;
  readonly boilsC: Float64Array;
  readonly steamKgPerS: Float64Array;
}

export interface Recorder {
  /** Keeps a point; the pan's view must be that of y. Two points at one time stand for a deed between them. */
  keep(timeS: number, y: Float64Array, dy: Float64Array, pan: Pan): void;
  sample(everyS: number): Sampled;
}

export function createRecorder(): Recorder {
  let kept = new Float64Array(width * 512);
  let count = 0;

  return {
    keep(timeS, y, dy, pan) {
      if ((count + 1) * width > kept.length) {
        const larger = new Float64Array(kept.length * 2);
        larger.set(kept);
        kept = larger;
      }
      const at = count++ * width;
      kept[at] = timeS;
      kept.set(y, at + 1);
      kept.set(dy.subarray(0, movingCount), at + slopesAt);
      const { view } = pan;
      kept[at + extrasAt] = view.temperatureC;
      kept[at + extrasAt + 1] = view.warmingKPerS;
      kept[at + extrasAt + 2] = view.ph;
      kept[at + extrasAt + 3] = view.boilsC;
      kept[at + extrasAt + 4] = view.steamKgPerS;
    },

    sample(everyS) {
      const endS = kept[(count - 1) * width];
      const rows = Math.floor(endS / everyS) + 1;
      const column = () => new Float64Array(rows);
      const timeS = column();
      const states = Array.from({ length: stateSize }, column);
      const [temperatureC, ph, boilsC, steamKgPerS] = [column(), column(), column(), column()];
      let segment = 0;
      for (let row = 0; row < rows; row++) {
        const t = row * everyS;
        // The last segment that starts at or before t, so that a deed shows at once.
        while (segment < count - 2 && kept[(segment + 1) * width] <= t) segment++;
        const a = segment * width;
        const b = a + width;
        const h = kept[b] - kept[a];
        const u = h > 0 ? (t - kept[a]) / h : 1;
        const v = 1 - u;
        const left = v * v * (1 + 2 * u);
        const right = u * u * (3 - 2 * u);
        const leftSlope = h * u * v * v;
        const rightSlope = -h * u * u * v;
        timeS[row] = t;
        for (let i = 0; i < movingCount; i++) {
          states[i][row] =
            left * kept[a + 1 + i] +
            right * kept[b + 1 + i] +
            leftSlope * kept[a + slopesAt + i] +
            rightSlope * kept[b + slopesAt + i];
        }
        for (let i = movingCount; i < stateSize; i++) states[i][row] = kept[a + 1 + i];
        const [x, y] = [a + extrasAt, b + extrasAt];
        temperatureC[row] = between(kept[x], kept[x + 1], kept[y], kept[y + 1], h, u);
        ph[row] = v * kept[x + 2] + u * kept[y + 2];
        boilsC[row] = v * kept[x + 3] + u * kept[y + 3];
        steamKgPerS[row] = v * kept[x + 4] + u * kept[y + 4];
      }
      return { timeS, states, temperatureC, ph, boilsC, steamKgPerS };
    },
  };
}
