/** The number in a message: the message itself, or what stands at a path in its JSON. */

/** @param path names and numbers with dots between; empty for the message itself */
export function valueAt(message: string, path: string): number | string | null {
  if (path === '') return message;
  try {
    return simple(path.split('.').reduce<unknown>(inside, JSON.parse(message)));
  } catch {
    // A will may be plain text where readings are JSON: what was sent is kept, and is no temperature.
    return message;
  }
}

function inside(value: unknown, name: string): unknown {
  return typeof value === 'object' && value !== null && Object.hasOwn(value, name)
    ? (value as Record<string, unknown>)[name]
    : undefined;
}

function simple(value: unknown): number | string | null {
  return typeof value === 'number' || typeof value === 'string' ? value : null;
}
