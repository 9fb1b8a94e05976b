/** The time axis, once under the deeds and once under the panels, and the scale of temperature. */
import { inUnit, type TemperatureUnit } from '../temperature.ts';
import type { Layout } from './layout.ts';

export function Axes({ layout, unit }: { readonly layout: Layout; readonly unit: TemperatureUnit }) {
  const { x, y, left, right, plotBottom, axes, timeTicks, temperatureTicks } = layout;
  const minGap = 15;
  return (
    <g>
      {temperatureTicks.map((tick, i) => {
        const next = temperatureTicks[i + 1];
        const named = next === undefined || y(tick) - y(next) >= minGap || i % 2 === 0;
        return (
          <g key={tick}>
            <line className="grid" x1={left} x2={right} y1={y(tick)} y2={y(tick)} />
            {named && (
              <text className="tick" x={left - 8} y={y(tick) + 4} textAnchor="end">
                {inUnit(tick, unit).toFixed(0)}
                {tick === 100 && '°'}
              </text>
            )}
          </g>
        );
      })}
      <line className="floor" x1={left} x2={right} y1={plotBottom} y2={plotBottom} />
      {axes.map((top) => (
        <g key={top}>
          {timeTicks.map((minute, i) => (
            <g key={minute}>
              <line className="tick-line" x1={x(minute * 60)} x2={x(minute * 60)} y1={top} y2={top + 5} />
              <text className="tick" x={x(minute * 60)} y={top + 18} textAnchor="middle">
                {minute}
                {i === 0 && ' min'}
              </text>
            </g>
          ))}
        </g>
      ))}
    </g>
  );
}
