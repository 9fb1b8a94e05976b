/** What a worker was asked, as a view shows it: how far it is, its answer, or why there is none. */
import type { Remote } from 'comlink';
import { useEffect, useState } from 'react';
import type { Book } from './book.worker.ts';
import { ask } from './worker.ts';

export type Answer<T> =
  | { readonly kind: 'none' }
  | { readonly kind: 'working'; readonly done: number }
  | { readonly kind: 'done'; readonly value: T }
  | { readonly kind: 'failed'; readonly message: string };

/**
 * Asks again whenever the key is another; an undefined key asks nothing.
 *
 * @param key says what is asked: the question itself may be made anew each time
 */
export function useAsked<T>(
  key: string | undefined,
  question: (book: Remote<Book>, onPart: (done: number) => void) => Promise<T>,
): Answer<T> {
  const [answer, setAnswer] = useState<Answer<T>>({ kind: 'none' });
  // biome-ignore lint/correctness/useExhaustiveDependencies: the key stands for the question
  useEffect(() => {
    if (key === undefined) {
      setAnswer({ kind: 'none' });
      return;
    }
    let wanted = true;
    setAnswer({ kind: 'working', done: 0 });
    const asked = ask(question, (done) => wanted && setAnswer({ kind: 'working', done }));
    asked.answer.then(
      (value) => wanted && setAnswer({ kind: 'done', value }),
      (error: unknown) =>
        wanted && setAnswer({ kind: 'failed', message: error instanceof Error ? error.message : String(error) }),
    );
    return () => {
      wanted = false;
      asked.stop();
    };
  }, [key]);
  return answer;
}
