/** Why something was not kept, as a sentence for the page. The server's own details name fields as programs do. */
import { ProblemError } from './answer.ts';
import { isNotLetIn } from './reach.ts';

/** @param what did not happen, such as `Not saved` */
export function failureOf(error: unknown, what: string): string {
  if (!(error instanceof ProblemError)) {
    return `${what}: the server is not reached. Nothing is lost; try again when it is back.`;
  }
  const { errors, title } = error.problem;
  if (isNotLetIn(error)) {
    return `${what}: this device is not let in, or no longer. Nothing is lost; pair it, then try again.`;
  }
  if (errors?.some(({ field }) => field === 'kitId')) {
    return `${what}: the kit was deleted in the meantime. Save the kit as another, then try again.`;
  }
  return `${what}: ${title.charAt(0).toLowerCase()}${title.slice(1)}.`;
}
