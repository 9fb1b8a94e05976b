/** One cook among several: its line, told apart by dash and number, and its lane of colour. */
import { memo, useId } from 'react';
import { pointsAColour } from '../../../../core/book/summary.ts';
import type { Overlaid } from './overlaid.ts';

const dashes = ['none', '10 4', '3 3', '12 3 3 3', '6 2', '1 4', '16 5', '8 3 2 3 2 3', '4 8', '2 2 8 2'];

interface OverLineProps {
  readonly cook: Overlaid;
  readonly number: number;
  readonly zeroS: number;
  readonly x: (timeS: number) => number;
  readonly y: (celsius: number) => number;
  readonly lane: { readonly top: number; readonly height: number };
}

export const OverLine = memo(function OverLine({ cook, number, zeroS, x, y, lane }: OverLineProps) {
  const id = useId();
  const { timeS, celsius, colours } = cook.summary.line;
  const at = (i: number) => x((timeS[i] ?? 0) - zeroS);
  const path = timeS.map((_, i) => `${at(i).toFixed(1)} ${y(celsius[i] ?? 20).toFixed(1)}`).join('L');
  const last = timeS.length - 1;
  const [from, to] = [at(0), at(last)];
  // Where lines end close together their numbers still stand apart.
  const [numberX, numberY] = [to - 12 * (number % 3), y(celsius[last] ?? 20)];
  return (
    <g>
      <path className="over-line" d={`M${path}`} strokeDasharray={dashes[number - 1] ?? 'none'} />
      <g className="over-end">
        <circle cx={numberX} cy={numberY} r="9" />
        <text x={numberX} y={numberY + 4} textAnchor="middle">
          {number}
        </text>
      </g>
      <linearGradient id={id} gradientUnits="userSpaceOnUse" x1={from} x2={to} y1="0" y2="0">
        {colours.map((colour, i) => (
          // biome-ignore lint/suspicious/noArrayIndexKey: the place in the row is what a stop is
          <stop key={i} offset={(at(i * pointsAColour) - from) / Math.max(1, to - from)} stopColor={colour} />
        ))}
      </linearGradient>
      <rect
        className="over-lane"
        x={from}
        y={lane.top}
        width={Math.max(0, to - from)}
        height={lane.height}
        fill={`url(#${id})`}
      />
    </g>
  );
});
