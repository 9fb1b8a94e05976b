/** Both levers along the field, and what each does. */
import { axisShare, leverRange } from '../../../../core/planning/field/levers.ts';
import type { FieldSpec } from '../../../../core/planning/field.ts';
import type { TemperatureUnit } from '../../../parts/temperature.ts';
import type { Layout } from './layout.ts';
import { leverWords, unitOf } from './leverWords.ts';

interface FieldAxesProps {
  readonly spec: FieldSpec;
  /** Where the spot's own figures stand, px: ticks give way to them. */
  readonly spot: { readonly x: number; readonly y: number };
  readonly layout: Layout;
  readonly unit: TemperatureUnit;
}

/** Room that the name of a limit needs, px. */
const nameRoom = 18;

export function FieldAxes({ spec: { x, y, request }, spot, layout, unit }: FieldAxesProps) {
  const { left, top, plotWidth, plotHeight, xTicks, yTicks } = layout;
  const floor = top + plotHeight;
  const title = (lever: typeof x.lever) => `${leverWords[lever].name}, ${unitOf(lever, unit)}`;
  const [, allowedX] = leverRange(x.lever, request);
  const barred = layout.across(axisShare(x, allowedX));
  const middle = (barred + left + plotWidth) / 2;
  return (
    <g className="field-axes">
      {left + plotWidth - barred > nameRoom && (
        <text
          className="limit-name"
          x={middle}
          y={top + plotHeight / 2}
          dy="0.32em"
          textAnchor="middle"
          transform={`rotate(-90 ${middle} ${top + plotHeight / 2})`}
        >
          past the limit
        </text>
      )}
      <rect x={left} y={top} width={plotWidth} height={plotHeight} />
      {xTicks
        .filter(({ at }) => Math.abs(at - spot.x) > 30)
        .map(({ text, at }) => (
          <g key={text}>
            <path d={`M${at} ${floor}v5`} />
            <text x={at} y={floor + 19} textAnchor="middle">
              {text}
            </text>
          </g>
        ))}
      {yTicks
        .filter(({ at }) => Math.abs(at - spot.y) > 18)
        .map(({ text, at }) => (
          <g key={text}>
            <path d={`M${left} ${at}h-5`} />
            <text x={left - 9} y={at + 4} textAnchor="end">
              {text}
            </text>
          </g>
        ))}
      <text className="axis-title" x={left - 30} y={top - 12}>
        ↑ {title(y.lever)}
      </text>
      <text className="axis-title" x={left + plotWidth} y={floor + 42} textAnchor="end">
        {title(x.lever)} →
      </text>
    </g>
  );
}
