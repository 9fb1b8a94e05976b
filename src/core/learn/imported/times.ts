/** Times of a table: a count of seconds or minutes, a clock, or a day with a clock. Read as seconds from any origin. */
import { instantMs } from '../../log/instant.ts';

export const timeForms = ['s', 'min', 'clock', 'instant'] as const;
export type TimeForm = (typeof timeForms)[number];

export const timeExamples: Readonly<Record<TimeForm, string>> = {
  s: '90.5',
  min: '1.5',
  clock: '18:30:05',
  instant: '2031-05-09T18:30:05Z',
};

/** Seconds; undefined for what is not written so. */
export function secondsOf(text: string, form: TimeForm): number | undefined {
  if (form === 's' || form === 'min') {
    const value = numberOf(text);
    return value === undefined ? undefined : value * (form === 'min' ? 60 : 1);
  }
  if (form === 'clock') {
    const found = /^(\d{1,2}):([0-5]\d)(?::([0-5]\d(?:[.,]\d+)?))?$/.exec(text);
    return found
      ? Number(found[1]) * 3600 + Number(found[2]) * 60 + Number((found[3] ?? '0').replace(',', '.'))
      : undefined;
  }
  const found = /^(\d{4}-\d\d-\d\d)[T ](\d\d:\d\d)(?::(\d\d)(?:[.,](\d{1,3})\d*)?)?(?:Z)?$/.exec(text);
  if (!found) return undefined;
  try {
    return instantMs(`${found[1]}T${found[2]}:${found[3] ?? '00'}.${(found[4] ?? '0').padEnd(3, '0')}Z`) / 1000;
  } catch {
    return undefined;
  }
}

/** A number with a point or a comma; undefined for anything else. */
function numberOf(text: string): number | undefined {
  return /^[+-]?\d+(?:[.,]\d+)?$/.test(text) ? Number(text.replace(',', '.')) : undefined;
}
