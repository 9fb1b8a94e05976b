/** One labelled choice from a short list. */
import { useId } from 'react';
import { WrongMark } from './Field.tsx';

interface ChoiceProps<Value extends string> {
  readonly label: string;
  readonly value: Value;
  readonly options: readonly (readonly [Value, string])[];
  readonly onChoose: (value: Value) => void;
  readonly refusal?: string | undefined;
  readonly hint?: string | undefined;
  readonly wide?: boolean;
}

export function Choice<Value extends string>(props: ChoiceProps<Value>) {
  const { label, value, options, onChoose, refusal, hint, wide } = props;
  const id = useId();
  return (
    <div className={wide ? 'field wide' : 'field'} data-wrong={refusal ? '' : undefined}>
      <label htmlFor={id}>{label}</label>
      <select
        id={id}
        value={value}
        aria-invalid={refusal ? true : undefined}
        aria-describedby={`${id}-line`}
        onChange={(event) => onChoose(event.target.value as Value)}
      >
        {options.map(([each, name]) => (
          <option key={each} value={each}>
            {name}
          </option>
        ))}
      </select>
      <p id={`${id}-line`} className="line" aria-live="polite">
        {refusal ? (
          <>
            <WrongMark />
            {refusal}
          </>
        ) : (
          hint
        )}
      </p>
    </div>
  );
}
