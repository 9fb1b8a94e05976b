/** Points in time as text (RFC 3339, UTC, milliseconds) and as ms since 1970-01-01, without leap seconds. */

const form = /^\d{4}-\d\d-\d\dT\d\d:\d\d:\d\d\.\d{3}Z$/;
const dayMs = 86_400_000;

/**
 * Milliseconds since 1970-01-01T00:00:00.000Z.
 * @throws RangeError for anything but `YYYY-MM-DDThh:mm:ss.sssZ` with a day and a time that exist
 */
export function instantMs(text: string): number {
  if (!form.test(text)) throw new RangeError(`time is "${text}"; allowed: YYYY-MM-DDThh:mm:ss.sssZ`);
  const year = numberAt(text, 0, 4);
  const month = numberAt(text, 5, 2);
  const day = numberAt(text, 8, 2);
  const hour = numberAt(text, 11, 2);
  const minute = numberAt(text, 14, 2);
  const second = numberAt(text, 17, 2);
  const ms = numberAt(text, 20, 3);
  const isDay = month >= 1 && month <= 12 && day >= 1 && day <= daysIn(year, month);
  if (!isDay || hour > 23 || minute > 59 || second > 59)
    throw new RangeError(`time is "${text}", which does not exist`);
  return daysSince1970(year, month, day) * dayMs + ((hour * 60 + minute) * 60 + second) * 1000 + ms;
}

/** @param ms whole milliseconds since 1970, in the years 1970 to 9999 */
export function instantText(ms: number): string {
  const day = Math.floor(ms / dayMs);
  // Years that begin in March, counted from the year 0, so that a leap day comes last (as below, the other way round).
  const shifted = day + 719_468;
  const era = Math.floor(shifted / 146_097);
  const dayOfEra = shifted - era * 146_097;
  const yearOfEra = Math.floor(
    (dayOfEra - Math.floor(dayOfEra / 1460) + Math.floor(dayOfEra / 36_524) - Math.floor(dayOfEra / 146_096)) / 365,
  );
  const dayOfYear = dayOfEra - (365 * yearOfEra + Math.floor(yearOfEra / 4) - Math.floor(yearOfEra / 100));
  const monthFromMarch = Math.floor((5 * dayOfYear + 2) / 153);
  const date = dayOfYear - Math.floor((153 * monthFromMarch + 2) / 5) + 1;
  const month = monthFromMarch < 10 ? monthFromMarch + 3 : monthFromMarch - 9;
  const year = era * 400 + yearOfEra + (month <= 2 ? 1 : 0);
  const inDay = ms - day * dayMs;
  const two = (value: number) => String(value).padStart(2, '0');
  const clock = [inDay / 3_600_000, (inDay / 60_000) % 60, (inDay / 1000) % 60].map((part) => two(Math.floor(part)));
  const fraction = String(Math.floor(inDay % 1000)).padStart(3, '0');
  return `${String(year).padStart(4, '0')}-${two(month)}-${two(date)}T${clock.join(':')}.${fraction}Z`;
}

/** Digit by digit: a large log has millions of times to read. */
function numberAt(text: string, start: number, digits: number): number {
  let value = 0;
  for (let at = start; at < start + digits; at++) value = value * 10 + text.charCodeAt(at) - 48;
  return value;
}

function daysIn(year: number, month: number): number {
  if (month === 2) return year % 4 === 0 && (year % 100 !== 0 || year % 400 === 0) ? 29 : 28;
  return [4, 6, 9, 11].includes(month) ? 30 : 31;
}

/** Day number in the Gregorian calendar, counted in years that begin in March, so that a leap day comes last (Fliegel & Van Flandern 1968, Comm. ACM 11:657, rearranged; derived). */
function daysSince1970(year: number, month: number, day: number): number {
  const y = month > 2 ? year : year - 1;
  const monthFromMarch = (month + 9) % 12;
  const leapDays = Math.floor(y / 4) - Math.floor(y / 100) + Math.floor(y / 400);
  return y * 365 + leapDays + Math.floor((153 * monthFromMarch + 2) / 5) + day - 719_469;
}
