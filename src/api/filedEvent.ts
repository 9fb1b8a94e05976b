/** Events out of a file: what this Umberpan knows must be as it should be, what it does not know is let through. */

import type { FiledEvent } from '../core/log/cookFile.ts';
import type { LogEvent } from '../core/log/event.ts';
import { upToDate } from '../core/log/upgrade.ts';
import { eventSchema } from './event.ts';
import { type FieldError, fieldErrors } from './fieldError.ts';
import { z } from './zod.ts';

/** What is wrong with an event whose envelope was found to be there. */
export function faultsOfFiled(filed: FiledEvent): FieldError[] {
  const known = upToDate(filed.tServer === undefined ? filed : withoutStamp(filed));
  const { error } = known ? eventSchema.safeParse(known) : {};
  if (!error) return [];
  const issues = error.issues.filter((issue) => !isUnknownField(issue));
  return fieldErrors(new z.core.$ZodError(issues));
}

function withoutStamp({ tServer: _, ...event }: FiledEvent): LogEvent {
  return event;
}

function isUnknownField(issue: z.core.$ZodIssue): boolean {
  if (issue.code === 'unrecognized_keys') return true;
  return issue.code === 'invalid_union' && issue.errors.some((way) => way.length > 0 && way.every(isUnknownField));
}
