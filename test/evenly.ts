// Numbers for property tests, spread evenly: fast-check's own doubles crowd around zero, where most claims hold by themselves.
import fc from 'fast-check';

const steps = 1e6;

export function evenly(low: number, high: number): fc.Arbitrary<number> {
  return fc.integer({ min: 0, max: steps }).map((step) => low + ((high - low) * step) / steps);
}
