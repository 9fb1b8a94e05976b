/** The spot of the plan: a drop of its colour, led to both axes. */
import type { Look } from '../../../../core/planning/aim.ts';
import { cssOf } from '../../../../core/planning/field/drawn/grains.ts';
import type { Layout } from '../../../../core/planning/field/drawn/layout.ts';
import { type MadeHere, placeOf } from '../../../../core/planning/field/drawn/planes.ts';
import type { FieldSpec } from '../../../../core/planning/field.ts';
import type { PlanRequest } from '../../../../core/planning/request.ts';
import { ebcOf } from '../../../parts/figures.ts';
import type { TemperatureUnit } from '../../../parts/temperature.ts';
import { settingText } from './settingWords.ts';

interface FieldSpotProps {
  readonly spec: FieldSpec;
  readonly request: PlanRequest;
  readonly here: MadeHere | undefined;
  readonly working: boolean;
  readonly look: Look;
  readonly layout: Layout;
  readonly unit: TemperatureUnit;
}

const radius = 14;

export function FieldSpot({ spec, request, here, working, look, layout, unit }: FieldSpotProps) {
  const { u, v } = placeOf(spec, request);
  const { left, top, plotWidth, plotHeight } = layout;
  const [x, y] = [layout.across(u), layout.down(v)];
  const floor = top + plotHeight;
  const says = here ? `${ebcOf(here.a430)} EBC` : working ? '…' : 'no plan';
  const width = says.length * 8.4 + 16;
  const leftward = x + radius + 8 + width > left + plotWidth;
  const tagX = leftward ? x - radius - 8 - width : x + radius + 8;
  return (
    <g className="field-spot">
      <path className="lead under" d={`M${left} ${y}H${x}V${floor}`} />
      <path className="lead" d={`M${left} ${y}H${x}V${floor}`} />
      <Setting x={x} y={floor + 14} text={settingText(spec.x.lever, request[spec.x.lever], unit)} />
      <Setting x={left - 18} y={y} text={settingText(spec.y.lever, request[spec.y.lever], unit)} />
      <circle className="rim" cx={x} cy={y} r={radius + 3} />
      <circle cx={x} cy={y} r={radius} fill={here ? cssOf(look, here) : 'var(--paper)'} />
      <rect x={tagX} y={y - 15} width={width} height="30" rx="2" />
      <text x={tagX + width / 2} y={y + 5.5} textAnchor="middle">
        {says}
      </text>
    </g>
  );
}

function Setting({ x, y, text }: { readonly x: number; readonly y: number; readonly text: string }) {
  const width = text.length * 8 + 12;
  return (
    <g className="setting">
      <rect x={x - width / 2} y={y - 11} width={width} height="22" rx="2" />
      <text x={x} y={y + 5} textAnchor="middle">
        {text}
      </text>
    </g>
  );
}
