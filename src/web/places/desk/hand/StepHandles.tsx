/** A grip at the end of each hold of the pan line: up and down for its heat, to and fro for its length, by hand or by arrow keys. */
import { type KeyboardEvent, type PointerEvent, useRef } from 'react';
import type { StepKind } from '../../../../core/pan/steps.ts';
import { allHolds, type HoldPlace, heldAt, heldBy, holdRange } from '../../../../core/planning/holds.ts';
import type { PlanRequest } from '../../../../core/planning/request.ts';
import { isHold } from '../../../../core/planning/steps.ts';
import type { Layout } from '../../../parts/panLine/layout.ts';
import type { Picture } from '../../../parts/panLine/picture.ts';
import { stepNames } from '../../../parts/stepNames.ts';
import { useTemperatureUnit } from '../../../parts/TemperatureUnit.tsx';
import { degrees } from '../../../parts/temperature.ts';
import './hand.css';

interface StepHandlesProps {
  readonly picture: Picture;
  /** As it is on the Desk: the picture may still be of the one before. */
  readonly request: PlanRequest;
  readonly layout: Layout;
  readonly onChange: (change: Partial<PlanRequest>) => void;
}

export function StepHandles({ picture, request, layout, onChange }: StepHandlesProps) {
  const held = picture.plan.steps.flatMap((step, i) => (isHold(step) ? [picture.steps[i]] : []));
  return (
    <div className="hands">
      {allHolds(request).map((place, i) => {
        const span = held[i];
        return (
          span && (
            <Grip
              key={place}
              place={place}
              name={nameOf(place, span.kind)}
              request={request}
              x={layout.x(span.endS)}
              layout={layout}
              onChange={onChange}
            />
          )
        );
      })}
    </div>
  );
}

function nameOf(place: HoldPlace, kind: StepKind): string {
  return typeof place === 'number' ? `Further hold ${place + 1}, ${stepNames[kind].toLowerCase()},` : stepNames[place];
}

interface GripProps extends Omit<StepHandlesProps, 'picture'> {
  readonly place: HoldPlace;
  readonly name: string;
  readonly request: PlanRequest;
  readonly x: number;
}

/** Kelvin and minutes by key. */
const stepsByKey: Readonly<Record<string, readonly [number, number]>> = {
  ArrowUp: [1, 0],
  ArrowDown: [-1, 0],
  ArrowRight: [0, 1],
  ArrowLeft: [0, -1],
};

function Grip({ place, name, request, x, layout, onChange }: GripProps) {
  const { unit } = useTemperatureUnit();
  /** Where it was taken hold of, and what held then: the line moves while it is pulled. */
  const taken = useRef<{ readonly x: number; readonly y: number; readonly request: PlanRequest }>(undefined);
  const { celsius: middleC, minutes } = heldAt(place, request);
  const { low, high, limit } = holdRange(place, request);
  const y = layout.y(middleC);
  const kelvinPerPx = 2 / (layout.y(middleC - 1) - layout.y(middleC + 1));
  const minutesPerPx = 1 / (layout.x(60) - layout.x(0));
  const atLimit = limit !== undefined && middleC >= high;

  const pull = (event: PointerEvent) => {
    const from = taken.current;
    if (!from) return;
    onChange(
      heldBy(place, from.request, (from.y - event.clientY) * kelvinPerPx, (event.clientX - from.x) * minutesPerPx),
    );
  };
  const press = (event: KeyboardEvent) => {
    const steps = stepsByKey[event.key];
    if (!steps) return;
    event.preventDefault();
    onChange(heldBy(place, request, ...steps));
  };
  const says = `${degrees(middleC, unit)} for ${minutes} min`;
  return (
    <div
      className="grip"
      role="slider"
      tabIndex={0}
      aria-label={`${name} by hand: up and down its heat, left and right its minutes`}
      aria-valuemin={low}
      aria-valuemax={high}
      aria-valuenow={middleC}
      aria-valuetext={atLimit ? `${says}; hotter is not allowed: ${limit}` : says}
      style={{ left: x, top: y }}
      onPointerDown={(event) => {
        event.currentTarget.setPointerCapture(event.pointerId);
        taken.current = { x: event.clientX, y: event.clientY, request };
      }}
      onPointerMove={pull}
      onPointerUp={() => {
        taken.current = undefined;
      }}
      onPointerCancel={() => {
        taken.current = undefined;
      }}
      onKeyDown={press}
    >
      <span className="grip-mark" />
      <span className="grip-says">
        {says}
        {atLimit && ` (the most: ${limit})`}
      </span>
    </div>
  );
}
