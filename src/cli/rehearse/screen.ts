/** Where a rehearsal shows itself: one line that is drawn again and again in a terminal, plain lines now and then elsewhere. */

export interface Screen {
  /** Something that stays: a deed, an answer to a key. */
  note(text: string): void;
  /** How it stands at a cook time, s. */
  status(text: string, timeS: number): void;
  /** Leaves the status line standing. */
  end(): void;
}

/** Plain lines come at least this far apart, s of cook time. */
const plainEveryS = 60;

const silent: Screen = { note() {}, status() {}, end() {} };

/** @param quiet shows nothing unless it is a terminal: where the summary alone is wanted */
export function screenOn(
  stream: NodeJS.WriteStream,
  { quiet, environment = process.env }: { readonly quiet: boolean; readonly environment?: NodeJS.ProcessEnv },
): Screen {
  if (stream.isTTY && environment['TERM'] !== 'dumb') return redrawn(stream);
  return quiet ? silent : plain(stream);
}

/** Drawn over with blanks rather than erased, so that no escape sequence is needed. */
function redrawn(stream: NodeJS.WriteStream): Screen {
  let last = '';
  const draw = (text: string): void => {
    const width = Math.max(20, (stream.columns ?? 80) - 1);
    stream.write(`\r${text.slice(0, width).padEnd(width)}`);
  };
  return {
    note(text) {
      draw('');
      stream.write(`\r${text}\n`);
      draw(last);
    },
    status(text) {
      last = text;
      draw(text);
    },
    end() {
      stream.write('\n');
    },
  };
}

function plain(stream: NodeJS.WriteStream): Screen {
  let nextS = 0;
  return {
    note(text) {
      stream.write(`${text}\n`);
    },
    status(text, timeS) {
      if (timeS < nextS) return;
      nextS = timeS + plainEveryS;
      stream.write(`${text}\n`);
    },
    end() {},
  };
}
