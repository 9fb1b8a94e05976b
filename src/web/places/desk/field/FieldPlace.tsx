/** The field: every sugar that this kit can make over two levers. A spot that is chosen is the plan on the Desk. */
import { useMemo, useRef, useState } from 'react';
import type { Kit } from '../../../../core/pan/kit.ts';
import type { Look } from '../../../../core/planning/aim.ts';
import { bandAt, madeAt, placeOf, planesOf, refusalsAt } from '../../../../core/planning/field/drawn/planes.ts';
import { fieldLines } from '../../../../core/planning/field.ts';
import type { PlanRequest } from '../../../../core/planning/request.ts';
import type { TasteName } from '../../../../core/planning/taste.ts';
import { useTemperatureUnit } from '../../../parts/TemperatureUnit.tsx';
import { useSeen } from '../../../parts/useSeen.ts';
import { FieldFigure } from './FieldFigure.tsx';
import { FieldLegend } from './FieldLegend.tsx';
import { FieldLevers } from './FieldLevers.tsx';
import { FieldReadout } from './FieldReadout.tsx';
import { FieldTable } from './FieldTable.tsx';
import type { Levers } from './fieldSpec.ts';
import { useField } from './useField.ts';
import './fieldPlace.css';

export interface Wished {
  readonly a430: number;
  /** As it was asked for. */
  readonly name: string;
}

interface FieldPlaceProps {
  readonly request: PlanRequest;
  readonly kit: Kit;
  readonly wished: Wished | undefined;
  readonly onChoose: (levers: Partial<PlanRequest>) => void;
}

export function FieldPlace({ request, kit, wished, onChoose }: FieldPlaceProps) {
  const { unit } = useTemperatureUnit();
  const [chosen, setChosen] = useState<Levers>();
  const [look, setLook] = useState<Look>('glass');
  const [shown, setShown] = useState<readonly TasteName[]>(['fruit', 'burnt', 'alkali']);
  const section = useRef<HTMLElement>(null);
  const { levers, slid, cooked } = useField(request, kit, chosen, useSeen(section));
  const { spec, lines, band } = cooked;
  const planes = useMemo(() => (lines.length > 0 ? planesOf(spec, lines) : undefined), [spec, lines]);
  const place = placeOf(spec, request);
  const here = planes && madeAt(planes, place);
  const readout = {
    look,
    spec,
    request,
    here,
    band: bandAt(band, place),
    refusals: refusalsAt(spec, lines, place),
    working: cooked.done < fieldLines(spec).length,
    failed: cooked.failed,
  };
  return (
    <section ref={section} className="sugar-field screen" aria-labelledby="sugar-field">
      <header>
        <h2 id="sugar-field">Every sugar this kit can make</h2>
        <p className="quiet">By the {request.route} route. Choose a spot: it is the plan below.</p>
      </header>
      <div className="field-body">
        <FieldFigure
          cooked={cooked}
          planes={planes}
          look={look}
          shown={shown}
          wished={wished}
          request={request}
          readout={readout}
          unit={unit}
          onChoose={onChoose}
        />
        <div className="field-beside">
          <FieldReadout {...readout} />
          <FieldLevers
            request={request}
            levers={levers}
            slid={slid}
            look={look}
            onLevers={setChosen}
            onSlide={onChoose}
            onLook={setLook}
          />
        </div>
      </div>
      <FieldLegend shown={shown} onShow={setShown} sure={band !== undefined} />
      <FieldTable spec={spec} planes={planes} place={place} unit={unit} onChoose={onChoose} />
    </section>
  );
}
