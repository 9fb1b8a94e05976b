/** The writing tab holds a lock (Web Locks API): the browser frees it when the tab is gone, and gives it to the next. */
import type { Writer } from './writer.ts';

export async function lockWriter(
  locks: Pick<LockManager, 'request'>,
  name: string,
  changed: () => void,
): Promise<Writer> {
  let isHere = false;
  let letGo = () => {};
  let queued = new AbortController();
  let released = false;

  const hold = () =>
    new Promise<void>((resolve) => {
      letGo = resolve;
      if (released) return resolve();
      isHere = true;
      changed();
    });

  /** Waits for its turn, and after the lock was taken away waits again. */
  const wait = () => {
    queued = new AbortController();
    const { signal } = queued;
    locks.request(name, { signal }, hold).catch(() => signal.aborted || lost());
  };
  const lost = () => {
    isHere = false;
    if (released) return;
    changed();
    wait();
  };

  await new Promise<void>((settled) => {
    const first = (lock: Lock | null) => {
      const holding = lock ? hold() : wait();
      settled();
      return holding;
    };
    locks.request(name, { ifAvailable: true }, first).catch(lost);
  });

  return {
    isHere: () => isHere,
    takeOver: () =>
      new Promise<void>((taken) => {
        if (isHere) return taken();
        queued.abort();
        const steal = () => {
          const holding = hold();
          taken();
          return holding;
        };
        locks.request(name, { steal: true }, steal).catch(lost);
      }),
    release() {
      released = true;
      isHere = false;
      queued.abort();
      letGo();
    },
  };
}
