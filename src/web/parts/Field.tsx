/** One labelled text field, with a line below it for what it means or what is wrong with it. The line's room is always kept. */
import { useEffect, useId, useState } from 'react';
import './field.css';

interface FieldProps {
  readonly label: string;
  readonly text: string;
  readonly onText: (text: string) => void;
  readonly hint?: string | undefined;
  /** What is wrong with the text; told once the typing rests. */
  readonly trouble?: string | undefined;
  /** What keeps a text that was understood from being planned. */
  readonly refusal?: string | undefined;
  readonly keyboard?: 'text' | 'decimal';
  readonly name: string;
  readonly wide?: boolean;
  /** Not to be read over a shoulder. */
  readonly secret?: boolean;
}

/** While somebody types `400`, `4` is not an error yet, ms. */
const restMs = 600;

export function Field(props: FieldProps) {
  const { label, text, onText, hint, trouble, refusal, keyboard = 'text', name, wide, secret } = props;
  const id = useId();
  const [restedOn, setRestedOn] = useState(text);
  useEffect(() => {
    const timer = setTimeout(() => setRestedOn(text), restMs);
    return () => clearTimeout(timer);
  }, [text]);
  const wrong = refusal ?? (restedOn === text ? trouble : undefined);

  return (
    <div className={wide ? 'field wide' : 'field'} data-wrong={wrong ? '' : undefined}>
      <label htmlFor={id}>{label}</label>
      <input
        id={id}
        name={name}
        value={text}
        type={secret ? 'password' : 'text'}
        inputMode={keyboard}
        autoComplete={secret ? 'new-password' : 'off'}
        autoCapitalize="off"
        spellCheck={false}
        aria-invalid={wrong ? true : undefined}
        aria-describedby={`${id}-line`}
        onChange={(event) => onText(event.target.value)}
        onBlur={() => setRestedOn(text)}
      />
      <p id={`${id}-line`} className="line" aria-live="polite">
        {wrong ? (
          <>
            <WrongMark />
            {wrong}
          </>
        ) : (
          hint
        )}
      </p>
    </div>
  );
}

export function WrongMark() {
  return (
    <svg className="wrong-mark" viewBox="0 0 16 16" width="16" height="16" role="img" aria-label="Not possible:">
      <path d="M8 1.5 15 14H1z" fill="none" stroke="currentColor" strokeWidth="1.6" strokeLinejoin="round" />
      <path d="M8 6v4M8 11.6v.8" stroke="currentColor" strokeWidth="1.6" strokeLinecap="round" />
    </svg>
  );
}
