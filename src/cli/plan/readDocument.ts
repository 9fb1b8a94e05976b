/** JSON documents from a file or standard input, checked by the API's schemas. */
import type { z } from '../../api/zod.ts';
import { planOfReport } from '../../core/book/report/planOf.ts';
import { Stop } from '../stop.ts';
import { textIn } from '../textIn.ts';

/** Larger than any plan; a file named by mistake is not read into memory. */
const mostCharacters = 1_000_000;

/** @param file a path, or `-` for standard input */
export function readJson(file: string, field: string): unknown {
  const fail = failing(file, field);
  return jsonFrom(textIn(file, fail), fail);
}

/** @param fail ends the command over what is no JSON, or no document of ours */
export function jsonFrom(text: string, fail: (trouble: string) => never): unknown {
  if (text.length > mostCharacters) return fail('is too long for this');
  try {
    // A report carries the plan of its cook.
    return JSON.parse(planOfReport(text) ?? text);
  } catch (error) {
    return fail(`is not JSON: ${(error as Error).message}`);
  }
}

function failing(file: string, field: string): (trouble: string) => never {
  return (trouble) => {
    throw new Stop({ kind: 'misused', field, value: file, message: `${field} ${file}: ${trouble}` });
  };
}

/** The value as the schema knows it; every field that is wrong is named. */
export async function checked<Schema extends z.ZodType>(
  schema: Schema,
  value: unknown,
  field: string,
): Promise<z.infer<Schema>> {
  const result = schema.safeParse(value);
  if (result.success) return result.data;
  const { fieldErrors } = await import('../../api/fieldError.ts');
  const messages = fieldErrors(result.error).map(({ message }) => message);
  throw new Stop({ kind: 'misused', field, message: `${field}: ${messages.join('\n  ')}` });
}
