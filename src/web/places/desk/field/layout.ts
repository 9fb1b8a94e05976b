/** Where everything of the field's picture stands. */
import { scaleLinear } from 'd3-scale';
import type { Axis } from '../../../../core/planning/field/levers.ts';
import type { FieldSpec } from '../../../../core/planning/field.ts';
import { inUnit, type TemperatureUnit } from '../../../parts/temperature.ts';
import { leverWords } from './leverWords.ts';
import type { Place } from './planes.ts';

export interface Tick {
  readonly text: string;
  /** px along the axis. */
  readonly at: number;
}

export interface Layout {
  readonly width: number;
  readonly height: number;
  readonly left: number;
  readonly top: number;
  readonly plotWidth: number;
  readonly plotHeight: number;
  readonly across: (u: number) => number;
  readonly down: (v: number) => number;
  readonly placeAt: (x: number, y: number) => Place;
  readonly xTicks: readonly Tick[];
  readonly yTicks: readonly Tick[];
}

const margin = { left: 40, right: 10, top: 30, bottom: 52 };

export function layoutFor(width: number, { x, y }: FieldSpec, unit: TemperatureUnit): Layout {
  const plotWidth = Math.round(Math.max(200, width - margin.left - margin.right));
  const plotHeight = Math.round(Math.min(440, Math.max(230, plotWidth * 0.62)));
  const { left, top } = margin;
  const across = (u: number) => left + u * plotWidth;
  const down = (v: number) => top + (1 - v) * plotHeight;
  const within = (share: number) => Math.min(1, Math.max(0, share));
  return {
    width: left + plotWidth + margin.right,
    height: top + plotHeight + margin.bottom,
    left,
    top,
    plotWidth,
    plotHeight,
    across,
    down,
    placeAt: (px, py) => ({ u: within((px - left) / plotWidth), v: within(1 - (py - top) / plotHeight) }),
    xTicks: ticksOf(x, unit, plotWidth / 80, across),
    yTicks: ticksOf(y, unit, plotHeight / 60, down),
  };
}

function ticksOf(axis: Axis, unit: TemperatureUnit, most: number, along: (share: number) => number): readonly Tick[] {
  const shown = (value: number) => (leverWords[axis.lever].unit === 'C' ? inUnit(value, unit) : value);
  const scale = scaleLinear([shown(axis.low), shown(axis.high)], [0, 1]);
  return scale.ticks(most).map((value) => ({ text: String(value), at: along(scale(value)) }));
}
