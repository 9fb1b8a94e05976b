/**
 * One text for one value: JSON Canonicalization Scheme (RFC 8785). Names sorted by UTF-16 code units, numbers as ECMAScript
 * writes them (shortest that reads back, -0 as 0), no blanks. Beyond the RFC, a lone surrogate is kept, as its escape.
 */

/** @throws RangeError for a number that is not finite, TypeError for what JSON can't say; an undefined field is left out */
export function canonicalJson(value: unknown): string {
  if (value === null || typeof value === 'boolean' || typeof value === 'string') return JSON.stringify(value);
  if (typeof value === 'number') {
    if (!Number.isFinite(value)) throw new RangeError(`number is ${value}; allowed in JSON: finite numbers`);
    return JSON.stringify(value);
  }
  if (Array.isArray(value)) return `[${value.map(canonicalJson).join(',')}]`;
  if (typeof value !== 'object') throw new TypeError(`a ${typeof value} is not JSON`);
  const fields = Object.entries(value).filter(([, field]) => field !== undefined);
  fields.sort(([a], [b]) => (a < b ? -1 : 1));
  return `{${fields.map(([name, field]) => `${JSON.stringify(name)}:${canonicalJson(field)}`).join(',')}}`;
}
