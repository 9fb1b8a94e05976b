/** A strength from 0 to 5 for each word, by big numbers in a row; a word may be left out. */
import { useId } from 'react';
import { type Descriptor, descriptors, type Strengths, strengthRange } from '../../../../core/lot/taste.ts';

export const nothingTasted = Object.fromEntries(descriptors.map((name) => [name, null])) as Strengths;

interface StrengthProps {
  readonly strengths: Strengths;
  readonly onStrengths: (strengths: Strengths) => void;
}

export function StrengthFields({ strengths, onStrengths }: StrengthProps) {
  return (
    <div className="strengths">
      {descriptors.map((name) => (
        <StrengthRow
          key={name}
          name={name}
          strength={strengths[name]}
          onStrength={(strength) => onStrengths({ ...strengths, [name]: strength })}
        />
      ))}
    </div>
  );
}

const levels = Array.from({ length: strengthRange[1] + 1 }, (_, at) => at);

interface RowProps {
  readonly name: Descriptor;
  readonly strength: number | null;
  readonly onStrength: (strength: number | null) => void;
}

function StrengthRow({ name, strength, onStrength }: RowProps) {
  const group = useId();
  return (
    <fieldset>
      <legend>{name}</legend>
      {levels.map((level) => (
        <label key={level} data-picked={strength === level ? '' : undefined}>
          <input
            type="radio"
            name={group}
            checked={strength === level}
            onChange={() => onStrength(level)}
            onClick={() => strength === level && onStrength(null)}
          />
          {level}
        </label>
      ))}
    </fieldset>
  );
}
