/** Readings, spoon tests and alarms on a pan line, each with a shape of its own. */
import type { AlarmChange } from '../../../../core/advice/alarms/engine.ts';
import type { Shown } from '../../../../core/book/doings.ts';
import type { CookState } from '../../../../core/log/fold.ts';
import { ebcOf } from '../../../parts/figures.ts';
import type { Layout } from '../../../parts/panLine/layout.ts';

interface ReadingsProps {
  readonly shown: readonly Shown[];
  readonly atS: number;
  readonly layout: Layout;
}

/** Least distance of dots, px. */
const dotsApart = 3;

/** As dots, as soon as the log is there; of those that would run into each other every few are drawn. */
export function Readings({ shown, atS, layout: { x, y } }: ReadingsProps) {
  let lastX = Number.NEGATIVE_INFINITY;
  const dots = shown.map(({ timeS, valueC }) => {
    if (timeS > atS || x(timeS) - lastX < dotsApart) return '';
    lastX = x(timeS);
    return `M${x(timeS).toFixed(1)} ${y(valueC).toFixed(1)}h0`;
  });
  return <path className="readings" d={dots.join('')} />;
}

interface SpoonTestsProps {
  readonly state: CookState;
  readonly shown: readonly Shown[];
  readonly atS: number;
  readonly layout: Layout;
}

export function SpoonTests({ state, shown, atS, layout: { x, y } }: SpoonTestsProps) {
  return (
    <g className="spoon-tests">
      {state.deeds.map((entry) => {
        if (entry.kind !== 'spoonTest' || entry.timeS > atS) return null;
        const before = shown.findLast(({ timeS }) => timeS <= entry.timeS);
        const [px, py] = [x(entry.timeS), y(before?.valueC ?? 100)];
        const { a430 } = entry.body;
        return (
          <g key={entry.id}>
            <path d={`M${px} ${py - 7}l7 7l-7 7l-7-7z`} />
            {a430 !== null && (
              <text x={px} y={py - 11} textAnchor="middle">
                {ebcOf(a430)} EBC
              </text>
            )}
          </g>
        );
      })}
    </g>
  );
}

interface AlarmsProps {
  readonly alarms: readonly AlarmChange[];
  readonly atS: number;
  readonly layout: Layout;
}

/** A triangle where an alarm sounded. */
export function Alarms({ alarms, atS, layout: { x, plotBottom } }: AlarmsProps) {
  const at = plotBottom - 6;
  return (
    <g className="alarm-marks">
      {alarms.map(({ timeS, alarm, what }) =>
        what === 'sounded' && timeS <= atS ? (
          <path key={`${alarm} ${timeS}`} d={`M${x(timeS)} ${at - 8}l7 12h-14z`} />
        ) : null,
      )}
    </g>
  );
}
