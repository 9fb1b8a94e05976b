/** A range before, as a line with ends, and after, as a box with its middle, on one scale. The table beside it has the figures. */
import type { Range } from '../../../core/twin/range.ts';

export function RangeBar({ before, after }: { readonly before: Range; readonly after: Range }) {
  const low = Math.min(before.low, after.low);
  const high = Math.max(before.high, after.high);
  const x = (value: number) => 4 + (high > low ? (value - low) / (high - low) : 0.5) * 152;
  const width = Math.max(3, x(after.high) - x(after.low));
  return (
    <svg className="range-bar" viewBox="0 0 160 20" width="160" height="20" aria-hidden="true">
      <path d={`M${x(before.low)} 10H${x(before.high)}M${x(before.low)} 5v10M${x(before.high)} 5v10`} />
      <rect x={x(after.low)} y="5.5" width={width} height="9" />
      <path className="middle" d={`M${x(after.mid)} 2v16`} />
    </svg>
  );
}
