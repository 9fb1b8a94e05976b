/** What the marks on the field mean; the lines of each taste can be shown or not. */

import { lineStyles } from '../../../../core/planning/field/drawn/tasteLines.ts';
import { type TasteName, tasteNames } from '../../../../core/planning/taste.ts';

interface FieldLegendProps {
  readonly shown: readonly TasteName[];
  readonly onShow: (shown: readonly TasteName[]) => void;
  /** Are the grains of the colour's uncertainty there? */
  readonly sure: boolean;
}

export function FieldLegend({ shown, onShow, sure }: FieldLegendProps) {
  const toggled = (name: TasteName): readonly TasteName[] =>
    shown.includes(name) ? shown.filter((each) => each !== name) : [...shown, name];
  return (
    <div className="field-legend">
      <fieldset>
        <legend>Lines of taste, 0 to 10</legend>
        {tasteNames.map((name) => (
          <button key={name} type="button" aria-pressed={shown.includes(name)} onClick={() => onShow(toggled(name))}>
            <svg width="34" height="10" aria-hidden="true">
              <path d="M1 5h32" strokeDasharray={lineStyles[name].dash} />
            </svg>
            {name.charAt(0).toUpperCase() + name.slice(1)}
          </button>
        ))}
      </fieldset>
      <p className="small quiet">
        {sure
          ? 'Each grain is one cook that its spot may turn out as: where grains differ, the colour is unsure.'
          : 'Finding out how sure the colours are.'}{' '}
        Hatched: past a limit of safety, or not done within 6 hours. Tastes follow the model and are assumed, not
        measured.
      </p>
    </div>
  );
}
