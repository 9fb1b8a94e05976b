/** Days to remember as an iCalendar object (RFC 5545), for any calendar to take in: content lines escaped, folded, and ended by CRLF. */

export interface CalendarDay {
  /** The same for the same thing to remember, so that it is changed and not doubled when it comes again. */
  readonly uid: string;
  /** Counts the changes, from 0. */
  readonly sequence: number;
  /** `YYYY-MM-DD`. */
  readonly day: string;
  readonly summary: string;
  readonly description: string;
}

/** When on its day it is said, on the clock of the place. */
const saidAtHour = 9;
/** Octets of a content line without its end (3.1). */
const longestLine = 75;

/** @param stamp when this was written, RFC 3339 in UTC */
export function icalendar(days: readonly CalendarDay[], stamp: string): string {
  const lines = [
    'BEGIN:VCALENDAR',
    'VERSION:2.0',
    'PRODID:-//Umberpan//Glass//EN',
    'CALSCALE:GREGORIAN',
    ...days.flatMap((day) => eventLines(day, stamp)),
    'END:VCALENDAR',
  ];
  return lines.map((line) => `${folded(line)}\r\n`).join('');
}

/** A whole day (3.6.1) that takes up no time, with one alarm in words (3.6.6). */
function eventLines({ uid, sequence, day, summary, description }: CalendarDay, stamp: string): readonly string[] {
  return [
    'BEGIN:VEVENT',
    `UID:${escaped(uid)}`,
    `DTSTAMP:${stamp.replaceAll(/[-:]|\.\d+/g, '')}`,
    `SEQUENCE:${sequence}`,
    `DTSTART;VALUE=DATE:${day.replaceAll('-', '')}`,
    `SUMMARY:${escaped(summary)}`,
    `DESCRIPTION:${escaped(description)}`,
    'TRANSP:TRANSPARENT',
    'BEGIN:VALARM',
    'ACTION:DISPLAY',
    `DESCRIPTION:${escaped(summary)}`,
    `TRIGGER:PT${saidAtHour}H`,
    'END:VALARM',
    'END:VEVENT',
  ];
}

/** Text as a value (3.3.11); control characters have no place in one. */
export function escaped(text: string): string {
  return text
    .replaceAll(/[\\;,]/g, '\\$&')
    .replaceAll(/\r\n|\r|\n/g, '\\n')
    .replaceAll(/[^\P{Cc}\t]/gu, '');
}

/** Lines of at most 75 octets of UTF-8; the next begins with a blank (3.1). No character is cut in two. */
export function folded(line: string): string {
  const lines: string[] = [];
  let current = '';
  let octets = 0;
  for (const character of line) {
    const more = Buffer.byteLength(character);
    if (octets + more > longestLine) {
      lines.push(current);
      current = ' ';
      octets = 1;
    }
    current += character;
    octets += more;
  }
  return [...lines, current].join('\r\n');
}
