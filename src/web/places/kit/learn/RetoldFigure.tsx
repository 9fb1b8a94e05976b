/** The check to look at before accepting: the cook's readings, and what should have been read by the kit before and after. */
import { line } from 'd3-shape';
import type { Retold } from '../../../../core/learn/learn.ts';
import { useTemperatureUnit } from '../../../parts/TemperatureUnit.tsx';
import { inUnit } from '../../../parts/temperature.ts';

const [width, height, left, bottom] = [720, 260, 44, 28];

export function RetoldFigure({ retold }: { readonly retold: Retold }) {
  const { unit } = useTemperatureUnit();
  const { timeS, readC, beforeC, afterC } = retold;
  const lastS = timeS.at(-1) ?? 1;
  const high = Math.max(...readC) + 8;
  const low = Math.min(...readC) - 2;
  const x = (s: number) => left + (s / lastS) * (width - left - 6);
  const y = (celsius: number) => 6 + ((high - celsius) / (high - low)) * (height - bottom - 6);
  const pathOf = (values: Float64Array) =>
    line<number>()
      .defined((value) => Number.isFinite(value) && value < high)
      .x((_, i) => x(timeS[i] ?? 0))
      .y(y)([...values]) ?? '';
  const ticks = [25, 50, 75, 100, 125, 150].filter((celsius) => celsius > low && celsius < high);
  const off = (values: Float64Array) =>
    Math.sqrt(values.reduce((sum, value, i) => sum + (value - readC[i]) ** 2, 0) / Math.max(1, values.length));
  const offText = (values: Float64Array) => `${(off(values) * (unit === 'F' ? 1.8 : 1)).toFixed(1)} °${unit}`;
  return (
    <figure className="retold">
      <figcaption>
        The cook told again from its deeds: by what was known before (dashed, off by {offText(beforeC)}), and by what it
        teaches (line, off by {offText(afterC)}). Dots are the readings.
      </figcaption>
      <svg viewBox={`0 0 ${width} ${height}`} role="img" aria-label="Readings, and what was told of them">
        {ticks.map((celsius) => (
          <g key={celsius}>
            <line className="grid" x1={left} x2={width} y1={y(celsius)} y2={y(celsius)} />
            <text x={left - 6} y={y(celsius) + 4} textAnchor="end">
              {inUnit(celsius, unit).toFixed(0)}
            </text>
          </g>
        ))}
        {[0, 0.25, 0.5, 0.75, 1].map((part) => (
          <text key={part} x={x(part * lastS)} y={height - 8} textAnchor={part === 1 ? 'end' : 'middle'}>
            {Math.round((part * lastS) / 60)} min
          </text>
        ))}
        <path className="before" d={pathOf(beforeC)} />
        <path className="after" d={pathOf(afterC)} />
        {[...readC].map((celsius, i) => (
          <circle key={timeS[i]} cx={x(timeS[i])} cy={y(celsius)} r="1.8" />
        ))}
      </svg>
    </figure>
  );
}
