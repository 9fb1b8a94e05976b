/** What the voice says: the act first, then the number; twelve words at most. */
import { type AlarmId, alarmCatalogue } from '../../../../core/advice/alarms/catalogue.ts';

export const mostWords = 12;

export function alarmSaying(id: AlarmId, numberWords = ''): string {
  return saying(alarmCatalogue[id].action, numberWords);
}

/** The number only if it still has room; words too many are left out from the end, by sentences if that does it. */
export function saying(act: string, numberWords = ''): string {
  const withNumber = `${act.trim()} ${numberWords}`.trim();
  if (count(withNumber) <= mostWords) return withNumber;
  if (count(act) <= mostWords) return act.trim();
  const sentences = act.match(/[^.!?]+[.!?]*/g) ?? [act];
  const fitting = sentences.filter((_, i) => count(sentences.slice(0, i + 1).join('')) <= mostWords);
  return fitting.length > 0 ? fitting.join('').trim() : act.trim().split(/\s+/).slice(0, mostWords).join(' ');
}

function count(words: string): number {
  return words.split(/\s+/).filter(Boolean).length;
}
