/** A number by big steppers: no keyboard comes up over the stove. The field in the middle can still be typed into. */
import { useEffect, useId, useState } from 'react';
import './stepper.css';

interface StepperProps {
  readonly label: string;
  readonly value: number;
  /** Sizes of the steps, smallest first. */
  readonly steps: readonly number[];
  readonly range: readonly [number, number];
  readonly onChange: (value: number) => void;
}

export function Stepper({ label, value, steps, range: [least, most], onChange }: StepperProps) {
  const id = useId();
  const [text, setText] = useState(shown(value));
  useEffect(() => setText(shown(value)), [value]);
  const within = (wished: number) => Math.min(most, Math.max(least, wished));
  const by = (step: number) => (
    <button
      key={step}
      type="button"
      aria-label={`${label}: ${sign(step)}`}
      onClick={() => onChange(within(value + step))}
    >
      {sign(step)}
    </button>
  );
  return (
    <div className="stepper">
      <label htmlFor={id}>{label}</label>
      <div className="stepper-row">
        {steps.toReversed().map((step) => by(-step))}
        <input
          id={id}
          inputMode="decimal"
          value={text}
          onChange={(event) => {
            setText(event.target.value);
            const typed = Number(event.target.value.replace(',', '.'));
            if (event.target.value.trim() !== '' && typed >= least && typed <= most) onChange(typed);
          }}
          onBlur={() => setText(shown(value))}
        />
        {steps.map((step) => by(step))}
      </div>
    </div>
  );
}

const shown = (value: number): string => String(Number(value.toFixed(1)));
const sign = (step: number): string => (step > 0 ? `+${step}` : `−${-step}`);
