/** Which errors of SQLite mean that the disk or the file is at fault, and not what was asked (sqlite.org/rescode.html). */

const faults: Readonly<Record<number, string>> = {
  8: 'the data folder is read-only',
  10: 'the disk fails to read or write',
  11: 'the file is damaged',
  13: 'the disk is full',
  14: 'the file can not be opened',
  26: 'the file is no database',
};
const codes: Readonly<Record<string, number>> = {
  SQLITE_READONLY: 8,
  SQLITE_IOERR: 10,
  SQLITE_CORRUPT: 11,
  SQLITE_FULL: 13,
  SQLITE_CANTOPEN: 14,
  SQLITE_NOTADB: 26,
};

/** What is wrong with the storage, as a clause; undefined when the error says nothing of the kind. */
export function storageFault(error: unknown): string | undefined {
  if (!(error instanceof Error)) return undefined;
  const { code = '', errcode } = error as { code?: string; errcode?: number };
  // Node's own module gives numbers, the addon names; extended codes have the primary one in their low byte.
  if (errcode !== undefined) return faults[errcode & 0xff];
  const [name] = /^SQLITE_[A-Z]+/.exec(code) ?? [''];
  return faults[codes[name]];
}
