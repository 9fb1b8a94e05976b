/**
 * When the pan gets to what the step waits for, if nothing is done: twenty dots, each a pan of the twin, which people judge better than
 * words or a curve (Kay et al. 2016; Fernandes et al. 2018). The middle stands on the dots, not beside them.
 */
import type { Arrival as Arriving } from '../../../core/advice/arrival.ts';
import { useTemperatureUnit } from '../../parts/TemperatureUnit.tsx';
import { degrees, type TemperatureUnit } from '../../parts/temperature.ts';
import { arrivalWords, dotsOf } from './arrivalDots.ts';
import type { Ahead } from './view.ts';

interface ArrivalProps {
  readonly ahead: Ahead | undefined;
  readonly begun: boolean;
}

export function Arrival({ ahead, begun }: ArrivalProps) {
  const { unit } = useTemperatureUnit();
  const arrival = begun ? ahead?.arrival : undefined;
  return (
    <section className="arrival" aria-labelledby="arrival">
      <h2 id="arrival">{arrival ? `When it is at ${degrees(arrival.toC, unit)}` : 'When it is there'}</h2>
      {arrival ? (
        <Dots arrival={arrival} unit={unit} />
      ) : (
        <p className="quiet">{begun ? 'No temperature is waited for in this step.' : 'Told once the heat is on.'}</p>
      )}
    </section>
  );
}

const width = 320;
const height = 132;
const margin = 12;
const floor = height - 24;
const radius = 4;
/** The outer ticks stay inside the picture. */
const anchors = ['start', 'middle', 'end'] as const;

function Dots({ arrival, unit }: { readonly arrival: Arriving; readonly unit: TemperatureUnit }) {
  const words = arrivalWords(arrival, degrees(arrival.toC, unit));
  const { dots, lastMin, ticksMin, highest } = dotsOf(arrival, Math.floor((width - 2 * margin) / (2 * radius + 1)));
  const x = (min: number) => margin + (min / lastMin) * (width - 2 * margin);
  // A tall heap is pressed together rather than cut.
  const apart = Math.min(2 * radius + 1, (floor - 30) / highest);
  const midMin = arrival.range.mid / 60;
  return (
    <>
      <svg viewBox={`0 0 ${width} ${height}`} role="img" aria-label={words}>
        <line className="scale" x1={margin} x2={width - margin} y1={floor} y2={floor} />
        {ticksMin.map((min, i) => (
          <text key={min} x={x(min)} y={height - 6} textAnchor={anchors[i]}>
            {min === 0 ? 'now' : `${min} min`}
          </text>
        ))}
        {dots.map(({ atMin, level, rank }) => (
          <circle key={rank} cx={x(atMin)} cy={floor - radius - 1 - level * apart} r={radius} />
        ))}
        {Number.isFinite(midMin) && (
          <g className="mid">
            <line x1={x(midMin)} x2={x(midMin)} y1={20} y2={floor} />
            <text x={Math.min(width - 30, Math.max(30, x(midMin)))} y={14} textAnchor="middle">
              {minutesText(midMin)}
            </text>
          </g>
        )}
      </svg>
      <p>{words}</p>
    </>
  );
}

const minutesText = (min: number): string => (min < 1 ? 'under 1 min' : `${Math.round(min)} min`);
