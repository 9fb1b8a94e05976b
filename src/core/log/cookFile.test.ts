import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { sampleCook, sampleDevice, sha256 } from '../../../test/sampleCook.ts';
import { canonicalJson } from './canonicalJson.ts';
import { type FiledEvent, readCookFile, writeCookFile } from './cookFile.ts';
import type { LogEvent } from './event.ts';
import { foldCook } from './fold.ts';

const { cook, events } = sampleCook();
const text = writeCookFile(cook, events, sha256);

function readBack(file: string): readonly FiledEvent[] {
  const read = readCookFile(file, sha256);
  if (read.kind === 'refused') throw new Error(`line ${read.line}: ${read.reason}`);
  return read.events;
}

describe('writing what was read gives the same bytes', () => {
  it('for a cook with everything in it, in whatever order its events were held', () => {
    expect(writeCookFile(cook, readBack(text), sha256)).toBe(text);
    expect(writeCookFile(cook, events.toReversed(), sha256)).toBe(text);
    expect(foldCook(readBack(text))).toEqual(foldCook(events));
  });

  it('with fields, kinds and versions that this Umberpan does not know', () => {
    const device = sampleDevice(cook);
    const odd: LogEvent[] = [
      { ...device.make('stir', {}, 1), kind: 'smell', body: { of: 'plums', '\ud83c\udf51': null, lone: '\ud800' } },
      { ...device.make('stir', {}, 2), v: 7, body: { how: { deep: [1e-300, 1e300, -0, 0.1 + 0.2] } } },
      { ...device.make('note', { text: 'é \u0065\u0301 \u2028 \0' }, 3), mood: 'calm' } as LogEvent,
    ];
    const file = writeCookFile(cook, [...events, ...odd], sha256);
    expect(writeCookFile(cook, readBack(file), sha256)).toBe(file);
    expect(file).toContain('"mood":"calm"');
    expect(file).toContain('"kind":"smell"');
  });

  it('for any bodies', () => {
    const bodies = fc.array(fc.dictionary(fc.string({ unit: 'binary' }), fc.jsonValue()), { maxLength: 12 });
    fc.assert(
      fc.property(bodies, (list) => {
        const device = sampleDevice(cook);
        const made = list.map((body, place): LogEvent => ({ ...device.make('stir', {}, place), kind: 'odd', body }));
        const file = writeCookFile(cook, made, sha256);
        return writeCookFile(cook, readBack(file), sha256) === file;
      }),
      { numRuns: 500 },
    );
  }, 30_000);

  it('where the field that the store takes out also stands elsewhere in the event', () => {
    const tServer = '2031-05-09T18:30:02.000Z';
    const [event] = events;
    const odd = [
      { ...event, tServer },
      { ...event, tServer, body: { a: 1, tServer } },
      { ...event, tServer, zoo: { a: 1, tServer } },
      { ...event, tServer, zoo: `,"tServer":"${tServer}"` },
      event,
    ];
    for (const one of odd) {
      const read = readCookFile(writeCookFile(cook, [one as FiledEvent], sha256), sha256);
      const { tServer: _, ...made } = one as FiledEvent;
      expect(read).toMatchObject({ kind: 'cook', contents: [canonicalJson(made)] });
    }
  });

  it('for a cook without events', () => {
    const file = writeCookFile(cook, [], sha256);
    expect(writeCookFile(cook, readBack(file), sha256)).toBe(file);
  });
});

it('keeps when the server had an event, and not its place in that store', () => {
  const stamp = { seq: 7, tServer: '2031-05-09T18:30:02.000Z', prevHash: 'p', hash: 'h' };
  const [read] = readBack(writeCookFile(cook, [{ ...events[0], ...stamp }], sha256));
  expect(read).toEqual({ ...events[0], tServer: stamp.tServer });
});

describe('a file that is not whole is refused, with the line', () => {
  const lines = text.split('\n');
  const tampered = (line: number, change: (old: string) => string) => lines.with(line, change(lines[line])).join('\n');

  it.each([
    ['another file', '{"hello":"world"}\n', 1, /not the file of a cook/],
    ['no JSON', 'hello', 1, /not the file of a cook/],
    ['nothing', '', 1, /not the file of a cook/],
    ['a later format', tampered(0, (old) => old.replace('"formatVersion":1', '"formatVersion":2')), 1, /version is 2/],
    ['cut off', text.slice(0, -40), lines.length - 2, /cut off/],
    ['a line less', lines.toSpliced(3, 1).join('\n'), lines.length - 2, /cut off or added to/],
    ['a number changed', tampered(4, (old) => old.replace(/"tMono":\d/, '"tMono":9')), 1, /was changed/],
    ['a field twice', tampered(4, (old) => old.replace('{', '{"id":"x",')), 5, /canonical/],
    ['blanks', tampered(4, (old) => old.replace(':', ': ')), 5, /canonical/],
    ['half a line', tampered(4, (old) => old.slice(0, 30)), 5, /not JSON/],
    ['a list for an event', tampered(4, () => '[]'), 5, /missing/],
    ['null for an event', tampered(4, () => 'null'), 5, /no event/],
    ['no id', tampered(4, (old) => old.replace(/"id":"[^"]*",/, '')), 5, /id is missing/],
    ['a time that does not exist', tampered(4, (old) => old.replace(/-\d\dT/, '-99T')), 5, /tDevice/],
    ['a list for a time', tampered(4, (old) => old.replace(/"tDevice":("[^"]*")/, '"tDevice":[$1]')), 5, /tDevice/],
    ['half a character in the id', tampered(4, (old) => old.replace(/"id":"/, '"id":"\\ud800')), 5, /id is missing/],
    ['another cook', tampered(4, (old) => old.replace(cook, 'another')), 5, /another cook/],
    ['deep nesting', tampered(4, () => `{"a":${'['.repeat(1e5)}${']'.repeat(1e5)}}`), 5, /canonical/],
  ])('%s', (_, file, line, reason) => {
    expect(readCookFile(file, sha256)).toEqual({ kind: 'refused', line, reason: expect.stringMatching(reason) });
  });
});
