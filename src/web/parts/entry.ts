/** What a form's field is: how its value is written out, and how a typed text changes the thing that the form is about. */

/** A text that can't be taken; the message says what was given and what is allowed. */
export class EntryError extends Error {
  override readonly name = 'EntryError';
}

export interface Entry<T> {
  readonly label: string;
  readonly hint?: string;
  /** Keyboard that a phone should bring up. */
  readonly keyboard: 'text' | 'decimal';
  show(of: T): string;
  /** @throws EntryError */
  put(into: T, text: string): T;
}

/** A form's state: the last thing that was right, and the texts as typed, right or wrong. */
export interface Sheet<T> {
  readonly good: T;
  readonly texts: Readonly<Record<string, string>>;
}

export type Entries<T> = Readonly<Record<string, Entry<T>>>;

export function typed<T>(sheet: Sheet<T>, entries: Entries<T>, field: string, text: string): Sheet<T> {
  const texts = { ...sheet.texts, [field]: text };
  const good = attempt(sheet.good, entries[field], text);
  return { good: good.done ? good.value : sheet.good, texts };
}

/** The sheet with values that were chosen otherwise than by typing; the texts of their fields give way. */
export function replaced<T extends object>({ good, texts }: Sheet<T>, change: Partial<T>): Sheet<T> {
  // A field within a list goes by the name of the list, its place and its own.
  const kept = Object.entries(texts).filter(([field]) => !((field.split('.')[0] ?? field) in change));
  return { good: { ...good, ...change }, texts: Object.fromEntries(kept) };
}

export function textOf<T>(sheet: Sheet<T>, entries: Entries<T>, field: string): string {
  return sheet.texts[field] ?? entries[field]?.show(sheet.good) ?? '';
}

/** What is wrong, by field. */
export function troubles<T>(sheet: Sheet<T>, entries: Entries<T>): Readonly<Record<string, string>> {
  const wrong: Record<string, string> = {};
  for (const [field, text] of Object.entries(sheet.texts)) {
    const tried = attempt(sheet.good, entries[field], text);
    if (!tried.done) wrong[field] = tried.trouble;
  }
  return wrong;
}

/** The sheet without the texts of `fields` that were right, so that they are written out anew, as in another unit. */
export function rewritten<T>(sheet: Sheet<T>, entries: Entries<T>, fields: readonly string[]): Sheet<T> {
  const wrong = troubles(sheet, entries);
  const texts = Object.entries(sheet.texts).filter(([field]) => field in wrong || !fields.includes(field));
  return { ...sheet, texts: Object.fromEntries(texts) };
}

type Attempt<T> = { readonly done: true; readonly value: T } | { readonly done: false; readonly trouble: string };

function attempt<T>(good: T, entry: Entry<T> | undefined, text: string): Attempt<T> {
  if (!entry) return { done: true, value: good };
  try {
    return { done: true, value: entry.put(good, text) };
  } catch (error) {
    if (error instanceof EntryError) return { done: false, trouble: error.message };
    throw error;
  }
}
