/** The hold that is slid, the levers that span the picture, and how its sugars are looked at. */
import { useId } from 'react';
import type { Look } from '../../../../core/planning/aim.ts';
import { leverWords } from '../../../../core/planning/field/drawn/leverWords.ts';
import { type Lever, leverSteps, leversOf, openAxis } from '../../../../core/planning/field/levers.ts';
import type { PlanRequest } from '../../../../core/planning/request.ts';
import { Choice } from '../../../parts/Choice.tsx';
import { useTemperatureUnit } from '../../../parts/TemperatureUnit.tsx';
import { type Levers, withLever } from './fieldSpec.ts';
import { settingSaid } from './settingWords.ts';

interface FieldLeversProps {
  readonly request: PlanRequest;
  readonly levers: Levers;
  readonly slid: Lever | undefined;
  readonly look: Look;
  readonly onLevers: (levers: Levers) => void;
  readonly onSlide: (change: Partial<PlanRequest>) => void;
  readonly onLook: (look: Look) => void;
}

const looks = [
  ['glass', '1 cm of a 10 % solution'],
  ['drop', 'a drop on a white plate'],
] as const;

export function FieldLevers({ request, levers, slid, look, onLevers, onSlide, onLook }: FieldLeversProps) {
  const options = leversOf(request.route).map((lever) => [lever, leverWords[lever].name] as const);
  const pick = (axis: 'x' | 'y') => (
    <Choice
      label={axis === 'x' ? 'Across' : 'Up'}
      value={levers[axis]}
      options={options}
      onChoose={(lever) => onLevers(withLever(levers, axis, lever))}
    />
  );
  return (
    <div className="field-levers">
      {slid && <Slider lever={slid} request={request} onSlide={onSlide} />}
      <details>
        <summary>Other levers, another look</summary>
        <div className="pairs">
          {pick('x')}
          {pick('y')}
          <Choice wide label="Painted as" value={look} options={looks} onChoose={onLook} />
        </div>
      </details>
    </div>
  );
}

function Slider({
  lever,
  request,
  onSlide,
}: Pick<FieldLeversProps, 'request' | 'onSlide'> & { readonly lever: Lever }) {
  const { unit } = useTemperatureUnit();
  const id = useId();
  const { low, high } = openAxis(lever, request, 2);
  const said = settingSaid(lever, request[lever], unit);
  return (
    <div className="field-slider">
      <label htmlFor={id}>
        {leverWords[lever].name} <output htmlFor={id}>{said}</output>
      </label>
      <input
        id={id}
        type="range"
        min={low}
        max={high}
        step={leverSteps[lever]}
        value={request[lever]}
        aria-valuetext={said}
        onChange={(event) => onSlide({ [lever]: event.target.valueAsNumber })}
      />
    </div>
  );
}
