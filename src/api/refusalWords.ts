/** What a schema says of a value that it refuses: what was given and what is allowed, in our own words for every kind of fault. */
import type { z } from 'zod';

/** For a schema that knows best what it allows. */
export function refusal(allowed: string) {
  return (issue: { readonly input?: unknown }) => `is ${shown(issue.input)}; allowed: ${allowed}`;
}

/** For every schema that has no words of its own. */
export function refusalOf(issue: z.core.$ZodRawIssue): string {
  if (issue.code === 'unrecognized_keys') return 'is not known here';
  const allowed = allowedBy(issue);
  return allowed === undefined ? `is ${shown(issue.input)}, which is not allowed` : refusal(allowed)(issue);
}

function allowedBy(issue: z.core.$ZodRawIssue): string | undefined {
  switch (issue.code) {
    case 'invalid_type':
      return typeWords[issue.expected as string] ?? String(issue.expected);
    case 'too_small':
      return `${issue.minimum} or more${countedIn(issue.origin)}`;
    case 'too_big':
      return `${issue.maximum} or less${countedIn(issue.origin)}`;
    case 'invalid_value':
      return (issue.values as readonly unknown[]).map(String).join(', ');
    case 'invalid_format':
      return `text written as ${issue.format}`;
    case 'not_multiple_of':
      return `multiples of ${issue.divisor}`;
    default:
      return undefined;
  }
}

const typeWords: Readonly<Record<string, string>> = {
  string: 'text',
  number: 'a number',
  int: 'a whole number',
  boolean: 'true or false',
  object: 'an object',
  array: 'a list',
  tuple: 'a list',
  null: 'null',
};

function countedIn(origin: unknown): string {
  if (origin === 'string') return ' characters';
  return origin === 'array' ? ' entries' : '';
}

function shown(value: unknown): string {
  if (value === undefined) return 'missing';
  const text = typeof value === 'number' ? String(value) : (JSON.stringify(value) ?? typeof value);
  return text.length > 60 ? `${text.slice(0, 59)}…` : text;
}
