import fc from 'fast-check';
import { expect, it } from 'vitest';
import { lineReader, patternTrouble, textInLine } from './linePattern.ts';

it.each([
  ['{}', '131.5', '131.5'],
  ['{}', ' 131.5 ', '131.5'],
  ['{}', '--', '--'],
  ['T={}C', 'T=131.5C', '131.5'],
  ['T1: {} C', 'T1:  131.5 C', '131.5'],
  ['*,{},*', '00:12,131.5,21.0', '131.5'],
  ['* {} degC *', 'ch1 131.5 degC ok', '131.5'],
  ['T(1)={}', 'T(1)=131.5', '131.5'],
  ['T={}C', 'H=40%', undefined],
  ['{}', 'T=131.5 C', undefined],
])('%s finds in the line %j what stands there: %s', (pattern, line, text) => {
  expect(patternTrouble(pattern)).toBeUndefined();
  expect(textInLine(pattern)(line)).toBe(text);
});

it.each(['T', '{} {}', '*{}*x*'])('%s is no pattern', (pattern) => {
  expect(patternTrouble(pattern)).toBeDefined();
});

/** A search that goes wrong on these does not end within a test's time. */
it.each([
  ['* * {}', `${' '.repeat(198)}x,`],
  ['*{}* x', ' '.repeat(200)],
  ['*a*{}b', 'a'.repeat(200)],
  ['* *{} b', `a${' a'.repeat(99)}`],
])('%s is done with a line that is made to be slow', (pattern, line) => {
  expect(patternTrouble(pattern)).toBeUndefined();
  expect(textInLine(pattern)(line)).toBeUndefined();
});

it('is done with any pattern on any line', () => {
  const of = (letters: string, maxLength: number) =>
    fc.array(fc.constantFrom(...letters), { maxLength }).map((each) => each.join(''));
  const patterns = fc.oneof(
    fc.string({ maxLength: 60 }),
    fc.tuple(of('* a', 12), of('* a', 12)).map((ends) => ends.join('{}')),
  );
  const lines = fc.oneof(fc.string({ maxLength: 200 }), of(' a,', 200));
  fc.assert(
    fc.property(patterns, lines, (pattern, line) => {
      if (patternTrouble(pattern) === undefined) textInLine(pattern)(line);
    }),
    { numRuns: 2000 },
  );
});

it('cuts lines wherever the pieces end, and passes over what is no line', () => {
  const text = `21.5\r\n\n22\n${'x'.repeat(1000)}\n23\r24\n25`;
  for (const size of [1, 3, 7, 2000]) {
    const lines: string[] = [];
    const read = lineReader((line) => lines.push(line));
    for (let at = 0; at < text.length; at += size) read(text.slice(at, at + size));
    expect(lines).toEqual(['21.5', '22', '23', '24']);
  }
});
