/** A field of a sheet: text, hint and trouble come from its entry. */
import { type Entries, type Sheet, textOf, troubles } from './entry.ts';
import { Field } from './Field.tsx';

interface SheetFieldProps<T> {
  readonly sheet: Sheet<T>;
  readonly entries: Entries<T>;
  readonly field: string;
  readonly onText: (field: string, text: string) => void;
  readonly refusals?: Readonly<Record<string, string>>;
  readonly hint?: string | undefined;
  readonly wide?: boolean;
}

export function SheetField<T>({ sheet, entries, field, onText, refusals, hint, wide }: SheetFieldProps<T>) {
  const entry = entries[field];
  if (!entry) return null;
  return (
    <Field
      name={field}
      label={entry.label}
      hint={hint ?? entry.hint}
      text={textOf(sheet, entries, field)}
      trouble={troubles(sheet, entries)[field]}
      refusal={refusals?.[field]}
      keyboard={entry.keyboard}
      onText={(text) => onText(field, text)}
      {...(wide && { wide })}
    />
  );
}
