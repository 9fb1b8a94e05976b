/** What is wrong with an input, field by field, in words for the person who sent it: form, command line and API alike. */
import { z } from './zod.ts';

export const fieldErrorSchema = z.object({
  field: z.string().describe('Path of the field, such as `stove.ratedPowerW`; empty for the whole input.'),
  message: z.string().describe('The field, what was given and what is allowed, as one sentence.'),
});

export type FieldError = z.infer<typeof fieldErrorSchema>;

/** One error for each field that a schema refused. */
export function fieldErrors(refused: z.core.$ZodError): FieldError[] {
  return refused.issues.flatMap((issue) => {
    const paths = issue.code === 'unrecognized_keys' ? issue.keys.map((key) => [...issue.path, key]) : [issue.path];
    return paths.map((path) => {
      const field = path.map(String).join('.');
      return { field, message: `${field || 'the input'} ${issue.message}` };
    });
  });
}
