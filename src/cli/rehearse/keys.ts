/** Single keys from a terminal. */
import type { ReadStream } from 'node:tty';

export interface Keys {
  /** The next key, or undefined when none came in the time. */
  next(waitMs: number): Promise<string | undefined>;
  /** Gives the terminal back. */
  end(): void;
}

const interrupt = '\u0003';
/** 128 + SIGINT. */
const interrupted = 130;

export function keysOf(terminal: ReadStream): Keys {
  const typed: string[] = [];
  let awake = (): void => {};
  const hear = (text: string): void => {
    if (text.includes(interrupt)) {
      end();
      process.exit(interrupted);
    }
    // Arrows and the like come as sequences that start with an escape; no key here does.
    if (!text.startsWith('\u001b')) typed.push(...text);
    awake();
  };
  function end(): void {
    terminal.off('data', hear);
    terminal.setRawMode(false);
    terminal.pause();
  }
  terminal.setRawMode(true);
  terminal.setEncoding('utf8');
  terminal.on('data', hear);
  return {
    next: (waitMs) =>
      new Promise((resolve) => {
        const wake = (): void => {
          clearTimeout(timer);
          resolve(typed.shift());
        };
        const timer = setTimeout(wake, typed.length > 0 ? 0 : waitMs);
        awake = wake;
      }),
    end,
  };
}
