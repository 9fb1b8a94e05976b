/** Where everything of the field's picture stands. */
import { scaleLinear } from 'd3-scale';
import type { FieldSpec } from '../../field.ts';
import { type Axis, axisShare, type Lever, withinLimit } from '../levers.ts';
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
  /** Where a limit of safety ends the reach of a lever, px; at the end of the axis where none does. */
  readonly limitX: number;
  readonly limitY: number;
}

const margin = { left: 40, right: 10, top: 30, bottom: 52 };

/** How a lever's setting is counted on its axis, such as in another unit of temperature. */
type Counted = (lever: Lever, value: number) => number;

/** @param width of all of it, px */
export function layoutFor(width: number, { request, x, y }: FieldSpec, counted: Counted = (_, value) => value): Layout {
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
    xTicks: ticksOf(x, counted, plotWidth / 80, across),
    yTicks: ticksOf(y, counted, plotHeight / 60, down),
    limitX: across(axisShare(x, withinLimit(x, request).high)),
    limitY: down(axisShare(y, withinLimit(y, request).high)),
  };
}

function ticksOf(axis: Axis, counted: Counted, most: number, along: (share: number) => number): readonly Tick[] {
  const ends = [axis.low, axis.high].map((value) => counted(axis.lever, value));
  const scale = scaleLinear(ends, [0, 1]);
  return scale.ticks(most).map((value) => ({ text: String(value), at: along(scale(value)) }));
}
