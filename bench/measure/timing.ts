/** Timing by mitata, in milliseconds, and the machine it was done on. */
import { cpus } from 'node:os';
import { measure } from 'mitata';

export interface Timing {
  readonly medianMs: number;
  readonly leastMs: number;
}

/** Median and least of many runs, over at least `seconds`. */
export async function timed(run: () => unknown, seconds = 1.5): Promise<Timing> {
  const { p50, min } = await measure(run, { min_cpu_time: seconds * 1e9, min_samples: 12, batch_unroll: 1 });
  return { medianMs: p50 / 1e6, leastMs: min / 1e6 };
}

export function machine(): string {
  const [{ model }] = cpus();
  return `${cpus().length} cores (${model.trim()}), Node ${process.versions.node}, ${process.platform} ${process.arch}`;
}
