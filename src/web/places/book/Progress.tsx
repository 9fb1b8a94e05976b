/** How far a worker is, or why it gave up; nothing once it is done. */
import type { Answer } from './useAsked.ts';

export function Progress({ answer, what }: { readonly answer: Answer<unknown>; readonly what: string }) {
  if (answer.kind === 'failed') return <p role="alert">{`${what}: this failed. ${answer.message}`}</p>;
  if (answer.kind !== 'working') return null;
  return (
    <span className="book-progress">
      <progress aria-label={what} max={1} value={answer.done} />
      <span className="small quiet">{what}</span>
    </span>
  );
}
