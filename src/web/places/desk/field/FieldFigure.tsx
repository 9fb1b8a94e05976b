/** The picture of the field: its paint, its lines, and the spot chosen, by pointer, touch and arrow keys. */
import { type KeyboardEvent, type MouseEvent, useMemo } from 'react';
import type { Look } from '../../../../core/planning/aim.ts';
import { layoutFor } from '../../../../core/planning/field/drawn/layout.ts';
import { leverWords } from '../../../../core/planning/field/drawn/leverWords.ts';
import { type Planes, placeOf } from '../../../../core/planning/field/drawn/planes.ts';
import { leverSteps, settingAt } from '../../../../core/planning/field/levers.ts';
import type { PlanRequest } from '../../../../core/planning/request.ts';
import type { TasteName } from '../../../../core/planning/taste.ts';
import { useWidth } from '../../../parts/panLine/useWidth.ts';
import type { TemperatureUnit } from '../../../parts/temperature.ts';
import { FieldAxes } from './FieldAxes.tsx';
import { FieldLines } from './FieldLines.tsx';
import { FieldPaint } from './FieldPaint.tsx';
import type { Wished } from './FieldPlace.tsx';
import type { Readout } from './FieldReadout.tsx';
import { FieldSpot } from './FieldSpot.tsx';
import { madeSaid } from './readoutWords.ts';
import { settingIn, settingSaid } from './settingWords.ts';
import type { Cooked } from './useField.ts';

interface FieldFigureProps {
  readonly cooked: Cooked;
  readonly planes: Planes | undefined;
  readonly look: Look;
  readonly shown: readonly TasteName[];
  readonly wished: Wished | undefined;
  readonly request: PlanRequest;
  readonly readout: Readout;
  readonly unit: TemperatureUnit;
  readonly onChoose: (levers: Partial<PlanRequest>) => void;
}

/** Steps of the levers by key: across, up. */
const stepsByKey: Readonly<Record<string, readonly [number, number]>> = {
  ArrowRight: [1, 0],
  ArrowLeft: [-1, 0],
  ArrowUp: [0, 1],
  ArrowDown: [0, -1],
  PageUp: [0, 5],
  PageDown: [0, -5],
  Home: [-5, 0],
  End: [5, 0],
};

export function FieldFigure(props: FieldFigureProps) {
  const { cooked, planes, look, shown, wished, request, readout, unit, onChoose } = props;
  const { spec, band } = cooked;
  const { x, y } = spec;
  const [frame, width] = useWidth();
  const layout = useMemo(
    () => layoutFor(width, spec, (lever, value) => settingIn(lever, value, unit)),
    [width, spec, unit],
  );
  const place = placeOf(spec, request);

  const choose = (event: MouseEvent<HTMLDivElement>) => {
    const { left, top } = event.currentTarget.getBoundingClientRect();
    const { u, v } = layout.placeAt(event.clientX - left, event.clientY - top);
    onChoose({ [x.lever]: settingAt(x, u), [y.lever]: settingAt(y, v) });
  };
  const press = (event: KeyboardEvent) => {
    const steps = stepsByKey[event.key];
    if (!steps || event.ctrlKey || event.metaKey || event.altKey) return;
    event.preventDefault();
    const by = event.shiftKey ? 5 : 1;
    const moved = (axis: typeof x, count: number, share: number) =>
      settingAt(axis, share + (count * by * leverSteps[axis.lever]) / (axis.high - axis.low));
    onChoose({ [x.lever]: moved(x, steps[0], place.u), [y.lever]: moved(y, steps[1], place.v) });
  };
  const settings = [x, y].map(({ lever }) => `${leverWords[lever].name} ${settingSaid(lever, request[lever], unit)}`);

  return (
    <figure className="field-figure">
      <div
        ref={frame}
        className="field-frame"
        role="slider"
        tabIndex={0}
        aria-label={`Spot of the field. Left and right: ${leverWords[x.lever].name}. Up and down: ${leverWords[y.lever].name}`}
        aria-orientation="horizontal"
        aria-valuemin={x.low}
        aria-valuemax={x.high}
        aria-valuenow={request[x.lever]}
        aria-valuetext={`${settings.join(', ')}: ${madeSaid(readout)}`}
        style={{ height: layout.height }}
        onClick={choose}
        // A finger that drags scrolls the page; a mouse or a pen that drags takes the spot along.
        onPointerMove={(event) => event.pointerType !== 'touch' && event.buttons === 1 && choose(event)}
        onKeyDown={press}
      >
        <div
          className="field-ground"
          style={{ left: layout.left, top: layout.top, width: layout.plotWidth, height: layout.plotHeight }}
        >
          <FieldPaint planes={planes} band={band} look={look} width={layout.plotWidth} height={layout.plotHeight} />
        </div>
        <svg width={layout.width} height={layout.height} aria-hidden="true">
          <FieldLines planes={planes} shown={shown} wished={wished} layout={layout} />
          <FieldAxes
            spec={spec}
            spot={{ x: layout.across(place.u), y: layout.down(place.v) }}
            layout={layout}
            unit={unit}
          />
          <FieldSpot
            spec={spec}
            request={request}
            here={readout.here}
            working={readout.working}
            look={look}
            layout={layout}
            unit={unit}
          />
        </svg>
      </div>
    </figure>
  );
}
