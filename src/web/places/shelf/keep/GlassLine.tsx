/** The room on the line from glass to syrup: where this sugar's own bounds lie on it. */
import type { Keeping } from '../../../../core/lot/keep/keeping.ts';
import { degrees, type TemperatureUnit } from '../../../parts/temperature.ts';

interface GlassLineProps {
  readonly keeping: Keeping;
  readonly roomC: number;
  readonly unit: TemperatureUnit;
}

/** What is drawn, K from the glass transition. */
const span = [-45, 75] as const;
const zones = [
  { to: -10, name: 'dry' },
  { to: 0, name: 'tacky' },
  { to: 20, name: 'sticky' },
  { to: 60, name: 'soft' },
  { to: span[1], name: 'syrup' },
] as const;
const width = 320;
const x = (aboveK: number): number => {
  const within = Math.min(span[1], Math.max(span[0], aboveK));
  return ((within - span[0]) / (span[1] - span[0])) * width;
};

export function GlassLine({ keeping: { glassC }, roomC, unit }: GlassLineProps) {
  const at = x(roomC - glassC.mid);
  const [from, to] = [x(roomC - glassC.high), x(roomC - glassC.low)];
  return (
    <svg className="glass-scale" viewBox={`0 0 ${width} 74`} aria-hidden="true">
      {zones.map(({ to, name }, i) => {
        const start = x(zones[i - 1]?.to ?? span[0]);
        return (
          <g key={name}>
            <rect className={`zone zone-${i}`} x={start} y="26" width={x(to) - start} height="18" />
            <text x={(start + x(to)) / 2} y={i % 2 === 0 ? 60 : 71} textAnchor="middle">
              {name}
            </text>
          </g>
        );
      })}
      <path className="span" d={`M${from} 35 H${to}`} />
      <path className="here" d={`M${at} 22 v26`} />
      <text className="here-words" x={Math.min(width - 40, Math.max(40, at))} y="14" textAnchor="middle">
        {`your ${degrees(roomC, unit)}`}
      </text>
    </svg>
  );
}
