/** All fields of a sheet, in the order of its entries. */
import { type Entries, type Sheet, typed } from './entry.ts';
import { SheetField } from './SheetField.tsx';

interface SheetFieldsProps<T> {
  readonly sheet: Sheet<T>;
  readonly entries: Entries<T>;
  readonly onSheet: (sheet: Sheet<T>) => void;
}

export function SheetFields<T>({ sheet, entries, onSheet }: SheetFieldsProps<T>) {
  return Object.keys(entries).map((field) => (
    <SheetField
      key={field}
      sheet={sheet}
      entries={entries}
      field={field}
      onText={(name, text) => onSheet(typed(sheet, entries, name, text))}
    />
  ));
}
