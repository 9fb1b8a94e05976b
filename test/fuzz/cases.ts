// Runs random input against a boundary, as often as it is told, and says how many cases there were and how long the slowest took.
import fc from 'fast-check';

/** No case may keep a processor busy for longer, ms. */
const longestMs = 1000;

/** Of the case that failed, characters. */
const mostShown = 2000;

/** How many cases a boundary gets: few with all the other tests, `CASES=100000` for the full number. */
export function casesOf(usual: number): number {
  return Number(process.env['CASES'] ?? usual);
}

/** Time that a test may take for so many cases, ms: ten times what it needs, as the machine may have other things to do. */
export function timeFor(cases: number, eachMs: number): number {
  return 60_000 + 10 * cases * eachMs;
}

export interface Tally {
  /** @param as what came of a case, in a word or two */
  count(as: string): void;
  tell(): void;
}

/** A case that is looked at once more counts once. */
let isRepeating = false;

export function tallyOf(boundary: string): Tally {
  const startMs = performance.now();
  const outcomes = new Map<string, number>();
  return {
    count: (as) => void (isRepeating || outcomes.set(as, (outcomes.get(as) ?? 0) + 1)),
    tell() {
      const cases = [...outcomes.values()].reduce((sum, each) => sum + each, 0);
      const told = [...outcomes].toSorted(([, a], [, b]) => b - a).map(([as, times]) => `${times} ${as}`);
      const seconds = ((performance.now() - startMs) / 1000).toFixed(1);
      console.log(`${boundary}: ${cases} cases in ${seconds} s: ${told.join(', ')}`);
    },
  };
}

/** Every case has to end by itself with what `check` allows, and soon. */
export async function everyCase<T>(
  arbitrary: fc.Arbitrary<T>,
  cases: number,
  check: (value: T) => void | Promise<void>,
): Promise<void> {
  const property = fc.asyncProperty(arbitrary, async (value) => {
    const startMs = performance.now();
    await check(value);
    if (performance.now() - startMs < longestMs) return;
    // It may have waited for other work, of the machine or of the server itself: whatever hangs does so again.
    const before = process.cpuUsage();
    isRepeating = true;
    await check(value);
    isRepeating = false;
    const { user, system } = process.cpuUsage(before);
    const busyMs = (user + system) / 1000;
    if (busyMs > longestMs) throw new Error(`it kept a processor busy for ${busyMs.toFixed(0)} ms`);
  });
  const { failed, counterexample, seed, counterexamplePath, errorInstance } = await fc.check(property, {
    numRuns: cases,
  });
  if (!failed) return;
  const shown = fc.stringify(counterexample?.[0]);
  const where = `seed ${seed}, path ${counterexamplePath}, ${shown.length} characters`;
  throw new Error(`${where}: ${shown.slice(0, mostShown)}`, { cause: errorInstance });
}
