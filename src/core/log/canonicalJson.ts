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
  let fields = '';
  // Without a function to compare by, names are sorted by their code units.
  for (const name of Object.keys(value).sort()) {
    const field = (value as Readonly<Record<string, unknown>>)[name];
    if (field !== undefined) fields += `${fields && ','}${JSON.stringify(name)}:${canonicalJson(field)}`;
  }
  return `{${fields}}`;
}

/** Whether a text is the canonical form of the value that `JSON.parse` read from it; false for what is nested deeper than can be followed. */
export function isCanonical(text: string, value: unknown): boolean {
  try {
    // Where the names are in order already, JSON.stringify says the same and is several times faster.
    return (hasSortedNames(value) && JSON.stringify(value) === text) || canonicalJson(value) === text;
  } catch {
    return false;
  }
}

/** @param value out of `JSON.parse` */
function hasSortedNames(value: unknown): boolean {
  if (typeof value !== 'object' || value === null) return true;
  if (Array.isArray(value)) return value.every(hasSortedNames);
  let before: string | undefined;
  for (const name in value) {
    if (before !== undefined && name < before) return false;
    if (!hasSortedNames((value as Readonly<Record<string, unknown>>)[name])) return false;
    before = name;
  }
  return true;
}
