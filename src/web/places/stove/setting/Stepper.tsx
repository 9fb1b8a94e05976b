/** A whole number by large buttons, one or five at a time. */
import { useId } from 'react';

interface StepperProps {
  readonly label: string;
  readonly value: number;
  readonly unit: string;
  readonly least: number;
  readonly most: number;
  readonly onValue: (value: number) => void;
}

const strides = [-5, -1, 1, 5] as const;

export function Stepper({ label, value, unit, least, most, onValue }: StepperProps) {
  const id = useId();
  const stride = (by: number) => {
    const next = Math.min(most, Math.max(least, value + by));
    const says = `${label} ${Math.abs(by)} ${unit} ${by < 0 ? 'less' : 'more'}`;
    return (
      <button key={by} type="button" aria-label={says} disabled={next === value} onClick={() => onValue(next)}>
        {by < 0 ? '−' : '+'}
        {Math.abs(by)}
      </button>
    );
  };
  return (
    // biome-ignore lint/a11y/useSemanticElements: a fieldset would be read with the group of every button
    <div className="set-stepper" role="group" aria-labelledby={id}>
      <span id={id} className="small quiet">
        {label}
      </span>
      {strides.slice(0, 2).map(stride)}
      <output aria-live="polite">
        {value} {unit}
      </output>
      {strides.slice(2).map(stride)}
    </div>
  );
}
