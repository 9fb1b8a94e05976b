import { expect, it } from 'vitest';
import { storageFault } from './storageFault.ts';

const error = (fields: object) => Object.assign(new Error('x'), fields);

it.each([
  [{ code: 'SQLITE_FULL' }, 'the disk is full'],
  [{ code: 'SQLITE_IOERR_FSYNC' }, 'the disk fails to read or write'],
  [{ code: 'SQLITE_READONLY_DBMOVED' }, 'the data folder is read-only'],
  [{ code: 'SQLITE_CORRUPT' }, 'the file is damaged'],
  // As Node's own module tells it: IOERR_FSYNC is 10 + 4 * 256.
  [{ code: 'ERR_SQLITE_ERROR', errcode: 1034 }, 'the disk fails to read or write'],
  [{ code: 'ERR_SQLITE_ERROR', errcode: 13 }, 'the disk is full'],
  [{ code: 'SQLITE_CONSTRAINT_UNIQUE' }, undefined],
  [{ code: 'ERR_SQLITE_ERROR', errcode: 2067 }, undefined],
  [{ code: 'ENOENT' }, undefined],
  [{}, undefined],
])('%j is %s', (fields, fault) => {
  expect(storageFault(error(fields))).toBe(fault);
});
