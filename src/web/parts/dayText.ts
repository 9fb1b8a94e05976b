/** Days and times of day in words, the same in every place. */

const locale = 'en-GB';

/**
 * `12 September 2031`.
 *
 * @param at a moment, told in the zone of this device; or a day of the calendar (`2031-09-12`), which belongs to no zone
 */
export function dayText(at: string): string {
  return dateOf(at).toLocaleDateString(locale, { day: 'numeric', month: 'long', year: 'numeric' });
}

/** `12 Sept 2031`, or without its year, where there is room for no more. */
export function shortDayText(at: string, { year = true } = {}): string {
  return dateOf(at).toLocaleDateString(locale, { day: 'numeric', month: 'short', ...(year && { year: 'numeric' }) });
}

/** `12 September 2031, 21:40`. */
export function momentText(at: string): string {
  return `${dayText(at)}, ${timeText(at)}`;
}

/** `21:40`, or `21:40:05`. */
export function timeText(at: string, { seconds = false } = {}): string {
  return dateOf(at).toLocaleTimeString(locale, {
    hour: '2-digit',
    minute: '2-digit',
    ...(seconds && { second: '2-digit' }),
  });
}

const dateOf = (at: string): Date => new Date(/^\d{4}-\d\d-\d\d$/.test(at) ? `${at}T00:00:00` : at);
