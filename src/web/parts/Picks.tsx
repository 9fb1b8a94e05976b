/** A choice laid open: native radio buttons, each with a word on what it gives. */
import { useId } from 'react';

interface PicksProps<Value extends string> {
  readonly legend: string;
  readonly value: Value;
  readonly options: readonly { readonly value: Value; readonly name: string; readonly says?: string }[];
  readonly onPick: (value: Value) => void;
  readonly row?: boolean;
}

export function Picks<Value extends string>({ legend, value, options, onPick, row }: PicksProps<Value>) {
  const name = useId();
  return (
    <fieldset className={row ? 'picks row' : 'picks'}>
      <legend>{legend}</legend>
      {options.map((option) => (
        <label key={option.value} data-picked={option.value === value ? '' : undefined}>
          <input type="radio" name={name} checked={option.value === value} onChange={() => onPick(option.value)} />
          <span>
            <strong>{option.name}</strong>
            {option.says && <span className="says"> {option.says}</span>}
          </span>
        </label>
      ))}
    </fieldset>
  );
}
