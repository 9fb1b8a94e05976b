/**
 * Lines as thermometers write them to a serial port: a pattern says where the number stands. `{}` is the number, `*` anything,
 * blanks stand for blanks, all else for itself: `T1={} C`.
 */

/** Longer lines are noise. */
const longestLine = 200;
/** Each more would make the search that much slower on a line made to be slow. */
const mostStars = 2;

/** What is wrong with a pattern; undefined for a good one. */
export function patternTrouble(pattern: string): string | undefined {
  if (pattern.split('{}').length !== 2) return 'has to have {} once, where the number stands';
  if (pattern.split('*').length - 1 > mostStars) return `may have * up to ${mostStars} times`;
  return undefined;
}

/**
 * Blanks are made single ones first: beside two stars and the number there is then nothing of open length, and no line of
 * 200 characters keeps the search longer than their third power.
 *
 * @returns what stands where the pattern has the number; undefined when the line is not of that form
 */
export function textInLine(pattern: string): (line: string) => string | undefined {
  const parts = singleBlanks(pattern.trim()).split(/(\{\}|\*)/);
  const source = parts.map((part) => {
    if (part === '{}') return '([^\\s,;]+?)';
    if (part === '*') return '.*?';
    return part.replaceAll(/[.*+?^${}()|[\]\\]/g, '\\$&');
  });
  const form = new RegExp(`^ ?${source.join('')} ?$`);
  return (line) => form.exec(singleBlanks(line))?.[1];
}

const singleBlanks = (text: string): string => text.replaceAll(/\s+/g, ' ');

/** Takes text piece by piece and tells each line once it is whole; what is longer than a line is passed over. */
export function lineReader(told: (line: string) => void): (piece: string) => void {
  let waiting = '';
  let tooLong = false;
  return (piece) => {
    const lines = (waiting + piece).split(/[\r\n]+/);
    waiting = lines.pop() ?? '';
    for (const line of lines) {
      if (!tooLong && line.length <= longestLine && line.trim() !== '') told(line);
      tooLong = false;
    }
    if (waiting.length <= longestLine) return;
    waiting = '';
    tooLong = true;
  };
}
