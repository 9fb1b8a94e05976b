/** A cook as a small pan line: its temperature, painted below with the syrup's computed colour. */
import { memo, useId } from 'react';
import { pointsAColour, type Summary } from '../../../../core/book/summary.ts';

const [width, height] = [240, 64];
const ribbonDepth = 22;
const coldestC = 20;
const hottestC = 165;

const y = (celsius: number): number =>
  2 + (height - 6) * (1 - Math.min(1, Math.max(0, (celsius - coldestC) / (hottestC - coldestC))));

export const MiniLine = memo(function MiniLine({ line, endS }: Pick<Summary, 'line' | 'endS'>) {
  const id = useId();
  const { timeS, celsius, colours } = line;
  const last = timeS.at(-1) ?? 0;
  const x = (at: number): number => (width * at) / Math.max(1, last, endS);
  const points = timeS.map((at, i) => [x(at), y(celsius[i] ?? coldestC)] as const);
  const top = points.map(([px, py]) => `${px.toFixed(1)} ${py.toFixed(1)}`);
  const bottom = points
    .map(([px, py]) => `${px.toFixed(1)} ${Math.min(height, py + ribbonDepth).toFixed(1)}`)
    .toReversed();
  if (points.length < 2) return null;
  return (
    <svg className="mini-line" viewBox={`0 0 ${width} ${height}`} aria-hidden="true">
      <linearGradient id={id} gradientUnits="userSpaceOnUse" x1="0" x2={x(last)} y1="0" y2="0">
        {colours.map((colour, i) => (
          // biome-ignore lint/suspicious/noArrayIndexKey: the place in the row is what a stop is
          <stop key={i} offset={(timeS[i * pointsAColour] ?? last) / Math.max(1, last)} stopColor={colour} />
        ))}
      </linearGradient>
      <path d={`M${[...top, ...bottom].join('L')}Z`} fill={`url(#${id})`} />
      <path className="mini-course" d={`M${top.join('L')}`} />
    </svg>
  );
});
