import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { escaped, folded, icalendar } from './icalendar.ts';

const tasting = {
  uid: 'a-2-weeks@umberpan',
  sequence: 3,
  day: '2028-01-03',
  summary: 'Taste Père, Noël; 2 weeks',
  description: 'Bottled.\nWords: burnt \\ bitter',
};

describe('an iCalendar object (RFC 5545)', () => {
  it('is one event of a whole day, with what 3.6.1 requires, an alarm, and CRLF after every line', () => {
    const text = icalendar([tasting], '2027-12-20T18:04:05.678Z');
    expect(text.split('\r\n')).toEqual([
      'BEGIN:VCALENDAR',
      'VERSION:2.0',
      'PRODID:-//Umberpan//Glass//EN',
      'CALSCALE:GREGORIAN',
      'BEGIN:VEVENT',
      'UID:a-2-weeks@umberpan',
      'DTSTAMP:20271220T180405Z',
      'SEQUENCE:3',
      'DTSTART;VALUE=DATE:20280103',
      'SUMMARY:Taste Père\\, Noël\\; 2 weeks',
      'DESCRIPTION:Bottled.\\nWords: burnt \\\\ bitter',
      'TRANSP:TRANSPARENT',
      'BEGIN:VALARM',
      'ACTION:DISPLAY',
      'DESCRIPTION:Taste Père\\, Noël\\; 2 weeks',
      'TRIGGER:PT9H',
      'END:VALARM',
      'END:VEVENT',
      'END:VCALENDAR',
      '',
    ]);
  });

  it('folds as the example of 3.1 is unfolded: CRLF and a blank, at no more than 75 octets', () => {
    const line = `DESCRIPTION:${'x'.repeat(63)}yz`;
    expect(folded(line)).toBe(`DESCRIPTION:${'x'.repeat(63)}\r\n yz`);
    expect(folded('x'.repeat(75))).toBe('x'.repeat(75));
  });

  it('folds any text to lines of 75 octets that unfold to it, and cuts no character', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'grapheme', maxLength: 400 }), (text) => {
        const line = `SUMMARY:${escaped(text)}`;
        const lines = folded(line).split('\r\n');
        for (const each of lines) expect(Buffer.byteLength(each)).toBeLessThanOrEqual(75);
        expect(folded(line).replaceAll('\r\n ', '')).toBe(line);
        expect(folded(line)).not.toContain('\uFFFD');
      }),
    );
  });

  it('escapes any text so that it is one line, and reads back', () => {
    const read = (value: string) =>
      value.replaceAll(/\\([\\;,nN])/g, (_, sign: string) => (sign.toLowerCase() === 'n' ? '\n' : sign));
    fc.assert(
      fc.property(fc.string({ unit: fc.constantFrom('a', ',', ';', '\\', 'n', '\n', ':', '"', 'é') }), (text) => {
        expect(escaped(text)).not.toContain('\n');
        expect(read(escaped(text))).toBe(text);
      }),
    );
    expect(escaped('a\r\nb\u0007')).toBe('a\\nb');
  });
});
