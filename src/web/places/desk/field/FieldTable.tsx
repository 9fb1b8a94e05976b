/** The field as a table of sugars, each of which can be chosen: for screen readers, and for those who like figures. */

import { leverWords } from '../../../../core/planning/field/drawn/leverWords.ts';
import { madeAt, type Place, type Planes } from '../../../../core/planning/field/drawn/planes.ts';
import { axisShare, axisValue } from '../../../../core/planning/field/levers.ts';
import type { FieldSpec } from '../../../../core/planning/field.ts';
import type { PlanRequest } from '../../../../core/planning/request.ts';
import { ebcOf } from '../../../parts/figures.ts';
import type { TemperatureUnit } from '../../../parts/temperature.ts';
import { strengthOf } from './readoutWords.ts';
import { settingSaid } from './settingWords.ts';

interface FieldTableProps {
  readonly spec: FieldSpec;
  readonly planes: Planes | undefined;
  readonly place: Place;
  readonly unit: TemperatureUnit;
  readonly onChoose: (levers: Partial<PlanRequest>) => void;
}

const across = 7;
const up = 6;

/** Settings along an axis, as a kitchen would set them. */
function settingsOf(axis: FieldSpec['x'], count: number): readonly number[] {
  return Array.from({ length: count }, (_, i) => Number(axisValue({ ...axis, count }, i).toFixed(1)));
}

export function FieldTable({ spec, planes, place, unit, onChoose }: FieldTableProps) {
  const { x, y } = spec;
  const [xs, ys] = [settingsOf(x, across), settingsOf(y, up).toReversed()];
  const near = (a: number, b: number, count: number) => Math.abs(a - b) < 0.5 / (count - 1);
  return (
    <details className="field-table">
      <summary>The field as a table</summary>
      {/* biome-ignore lint/a11y/noNoninteractiveTabindex: without it the keyboard could not scroll the table */}
      <section className="scroll" aria-label="The field as a table" tabIndex={0}>
        <table>
          <caption className="small quiet">
            EBC of a 10 % solution, and fruit and roast. Across: {leverWords[x.lever].name}. Down:{' '}
            {leverWords[y.lever].name}. Choosing one makes it the plan.
          </caption>
          <thead>
            <tr>
              <td />
              {xs.map((setting) => (
                <th key={setting} scope="col">
                  {settingSaid(x.lever, setting, unit)}
                </th>
              ))}
            </tr>
          </thead>
          <tbody>
            {ys.map((high) => (
              <tr key={high}>
                <th scope="row">{settingSaid(y.lever, high, unit)}</th>
                {xs.map((wide) => {
                  const spot = { u: axisShare(x, wide), v: axisShare(y, high) };
                  const made = planes && madeAt(planes, spot);
                  const here = near(spot.u, place.u, across) && near(spot.v, place.v, up);
                  return (
                    <td key={wide} data-here={here ? '' : undefined}>
                      {made ? (
                        <button type="button" onClick={() => onChoose({ [x.lever]: wide, [y.lever]: high })}>
                          <strong>{ebcOf(made.a430)}</strong>
                          <span className="small">
                            fruit {strengthOf(made.taste.fruit)}, roast {strengthOf(made.taste.roast)}
                            {here && <span className="unseen">; the plan is nearest to this</span>}
                          </span>
                        </button>
                      ) : (
                        <span className="quiet small">no plan</span>
                      )}
                    </td>
                  );
                })}
              </tr>
            ))}
          </tbody>
        </table>
      </section>
    </details>
  );
}
