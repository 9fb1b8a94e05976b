/** The way to the Book's workers. Each question gets one of its own, which is ended with it: who leaves a cook stops what it asked. */
import { proxy, type Remote, wrap } from 'comlink';
import type { Book } from './book.worker.ts';

export interface Asked<T> {
  readonly answer: Promise<T>;
  stop(): void;
}

/** @param onPart told how far the work is, 0 to 1 */
export function ask<T>(
  question: (book: Remote<Book>, onPart: (done: number) => void) => Promise<T>,
  onPart: (done: number) => void = () => {},
): Asked<T> {
  const worker = new Worker(new URL('./book.worker.ts', import.meta.url), { type: 'module' });
  const answer = question(wrap<Book>(worker), proxy(onPart)).finally(() => worker.terminate());
  return { answer, stop: () => worker.terminate() };
}
