/** A day of the calendar, by the browser's own picker; it may stay empty. */
import { useId } from 'react';

interface DayFieldProps {
  readonly label: string;
  readonly day: string | null;
  readonly hint?: string;
  readonly onDay: (day: string | null) => void;
}

export function DayField({ label, day, hint, onDay }: DayFieldProps) {
  const id = useId();
  return (
    <div className="field">
      <label htmlFor={id}>{label}</label>
      <input
        id={id}
        type="date"
        value={day ?? ''}
        min="1970-01-01"
        max="9999-12-31"
        aria-describedby={`${id}-line`}
        onChange={(event) => onDay(event.target.value === '' ? null : event.target.value)}
      />
      <p id={`${id}-line`} className="line">
        {hint}
      </p>
    </div>
  );
}
