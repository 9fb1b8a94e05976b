/** The marks below which 10 %, 50 % and 90 % of values lie: how every uncertain number is shown. */
export interface Range {
  readonly low: number;
  readonly mid: number;
  readonly high: number;
}

/** @param values at least one */
export function rangeOf(values: ArrayLike<number>): Range {
  const sorted = Float64Array.from(values).sort();
  const at = (share: number): number => {
    const position = share * (sorted.length - 1);
    const i = Math.floor(position);
    const above = sorted[Math.min(i + 1, sorted.length - 1)];
    return sorted[i] + (position - i) * (above - sorted[i]);
  };
  return { low: at(0.1), mid: at(0.5), high: at(0.9) };
}
