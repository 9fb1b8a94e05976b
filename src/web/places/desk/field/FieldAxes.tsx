/** Both levers along the field, and what each does. */

import type { Layout } from '../../../../core/planning/field/drawn/layout.ts';
import { leverWords } from '../../../../core/planning/field/drawn/leverWords.ts';
import type { FieldSpec } from '../../../../core/planning/field.ts';
import type { TemperatureUnit } from '../../../parts/temperature.ts';
import { unitOf } from './settingWords.ts';

interface FieldAxesProps {
  readonly spec: FieldSpec;
  /** Where the spot's own figures stand, px: ticks give way to them. */
  readonly spot: { readonly x: number; readonly y: number };
  readonly layout: Layout;
  readonly unit: TemperatureUnit;
}

/** Room that the name of a limit needs, px. */
const nameRoom = 18;

export function FieldAxes({ spec: { x, y }, spot, layout, unit }: FieldAxesProps) {
  const { left, top, plotWidth, plotHeight, xTicks, yTicks, limitX, limitY } = layout;
  const floor = top + plotHeight;
  const title = (lever: typeof x.lever) => `${leverWords[lever].name}, ${unitOf(lever, unit)}`;
  const middle = (limitX + left + plotWidth) / 2;
  return (
    <g className="field-axes">
      {left + plotWidth - limitX > nameRoom && (
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
      {limitY - top > nameRoom && (
        <text className="limit-name" x={(left + limitX) / 2} y={(top + limitY) / 2} dy="0.32em" textAnchor="middle">
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
