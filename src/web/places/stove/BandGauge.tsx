/** Where the syrup is against its band: a scale with the band drawn in, the middle as a mark and its 10-90 % range as a box. */
import type { Range } from '../../../core/twin/range.ts';
import { inUnit, type TemperatureUnit } from '../../parts/temperature.ts';

interface BandGaugeProps {
  readonly believedC: Range;
  readonly bandC: readonly [number, number];
  readonly unit: TemperatureUnit;
}

const width = 320;

export function BandGauge({ believedC, bandC: [low, high], unit }: BandGaugeProps) {
  const room = Math.max(8, (high - low) * 1.2);
  const from = low - room;
  const to = high + room;
  const x = (c: number) => 10 + ((Math.min(to, Math.max(from, c)) - from) / (to - from)) * (width - 20);
  const name = (c: number) => inUnit(c, unit).toFixed(0);
  const mid = x(believedC.mid);
  return (
    <svg className="band-gauge" viewBox={`0 0 ${width} 58`} aria-hidden="true">
      <line className="scale" x1={10} x2={width - 10} y1={30} y2={30} />
      <rect className="band-box" x={x(low)} y={18} width={x(high) - x(low)} height={24} />
      <rect
        className="likely"
        x={x(believedC.low)}
        y={24}
        width={x(believedC.high) - x(believedC.low) + 1}
        height={12}
      />
      <path className="mark" d={`M${mid} 30V14M${mid - 7} 3h14l-7 11z`} />
      <text x={x(low)} y={56} textAnchor="middle">
        {name(low)}
      </text>
      <text x={x(high)} y={56} textAnchor="middle">
        {name(high)}
      </text>
    </svg>
  );
}
