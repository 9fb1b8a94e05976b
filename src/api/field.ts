/** Building blocks of the API's schemas. Each refuses with a sentence that says what was given and what is allowed. */
import { refusal } from './refusalWords.ts';
import { z } from './zod.ts';

/** A number within inclusive limits. */
export function numberIn([least, most]: readonly [number, number]) {
  const error = refusal(`a number from ${least} to ${most}`);
  return z.number({ error }).min(least, { error }).max(most, { error });
}

/** A whole number within inclusive limits. */
export function countIn([least, most]: readonly [number, number]) {
  const error = refusal(`a whole number from ${least} to ${most}`);
  return z.number({ error }).min(least, { error }).max(most, { error }).refine(Number.isSafeInteger, { error });
}

/** A whole number in an address or a header, where everything is text. */
export function countInText([least, most]: readonly [number, number]) {
  const error = refusal(`a whole number from ${least} to ${most}`);
  const read = (text: unknown) => (typeof text === 'string' && /^-?\d{1,17}$/.test(text) ? Number(text) : text);
  return z.preprocess(read, z.int({ error }).min(least, { error }).max(most, { error }));
}

/** A place in the store, or 0 for the time before the first. */
export const placeRange = [0, Number.MAX_SAFE_INTEGER] as const;

/** One word of a fixed list. */
export function oneOf<const Words extends readonly [string, ...string[]]>(words: Words) {
  return z.enum(words, { error: refusal(words.join(', ')) });
}

/** A name that a person gives: one line, without blanks around it. */
export function personsName(mostCharacters: number) {
  const error = refusal(`1 to ${mostCharacters} characters on one line`);
  return z
    .string({ error })
    .trim()
    .regex(/^\P{Cc}*$/u, { error })
    .min(1, { error })
    .max(mostCharacters, { error });
}

/** The identity of a record: a UUID, made by the server or by a client that must not lose its record when the link drops. */
export function recordId() {
  return z.uuid({ error: refusal('a UUID') });
}

/** An object with exactly these fields; a misspelt one is named. */
export function exactly<Shape extends z.ZodRawShape>(shape: Shape) {
  const known = Object.keys(shape).join(', ');
  return z.strictObject(shape, {
    error: (issue) =>
      issue.code === 'unrecognized_keys'
        ? `is not known; known here: ${known}`
        : refusal(`an object of ${known}`)(issue),
  });
}
