/** What the chosen spot makes: colour with its band, tastes and time; or why there is no plan for it. */
import type { Refusal } from '../../../../core/advice/limits.ts';
import type { Look } from '../../../../core/planning/aim.ts';
import { cssOf } from '../../../../core/planning/field/drawn/grains.ts';
import type { MadeHere } from '../../../../core/planning/field/drawn/planes.ts';
import type { FieldSpec } from '../../../../core/planning/field.ts';
import type { PlanRequest } from '../../../../core/planning/request.ts';
import { tasteNames } from '../../../../core/planning/taste.ts';
import { clock, ebcOf } from '../../../parts/figures.ts';
import { useTemperatureUnit } from '../../../parts/TemperatureUnit.tsx';
import { sentence } from '../sentence.ts';
import { bandSaid, madeSaid, strengthOf } from './readoutWords.ts';

export interface Readout {
  readonly look: Look;
  readonly spec: FieldSpec;
  readonly request: PlanRequest;
  readonly here: MadeHere | undefined;
  /** As factors of the colour; nothing until its draws are cooked. */
  readonly band: { readonly low: number; readonly high: number } | undefined;
  readonly refusals: readonly Refusal[];
  readonly working: boolean;
  readonly failed: string | undefined;
}

export function FieldReadout(readout: Readout) {
  const { unit } = useTemperatureUnit();
  const { here, band, look } = readout;
  // What is still being cooked keeps the room that it will take.
  const coming = readout.working && readout.failed === undefined;
  if (!here && !coming) {
    return (
      <p className="field-none">
        <strong>{readout.refusals.length > 0 ? 'No plan here. ' : ''}</strong>
        {sentence(readout.refusals[0]?.message ?? madeSaid(readout), unit)}
      </p>
    );
  }
  const chip = (factor: number) => here && { background: cssOf(look, { ...here, a430: here.a430 * factor }) };
  return (
    <div className="field-readout">
      <dl className="colour">
        <dt>Colour</dt>
        <dd>
          <span className="figure">
            {here ? ebcOf(here.a430) : '–'} <span className="unit">EBC</span>
          </span>
          <span className="range">
            {here && band ? `8 in 10 cooks: ${bandSaid(here.a430, band)}` : 'how sure, in a moment'}
          </span>
        </dd>
        <dd className="chips" aria-hidden="true">
          <span style={chip(band?.low ?? 1)} />
          <span style={chip(1)} />
          <span style={chip(band?.high ?? 1)} />
        </dd>
      </dl>
      <dl className="tastes">
        {tasteNames.map((name) => (
          <div key={name}>
            <dt>{name.charAt(0).toUpperCase() + name.slice(1)}</dt>
            {here ? (
              <dd data-strength={strengthOf(here.taste[name])}>
                {strengthOf(here.taste[name])} <span className="quiet">{here.taste[name].toFixed(1)}</span>
              </dd>
            ) : (
              <dd>–</dd>
            )}
          </div>
        ))}
        <div>
          <dt>Time</dt>
          <dd>{here ? clock(here.minutes) : '–'}</dd>
        </div>
      </dl>
    </div>
  );
}
