/** When to taste a beer again: some weeks after its bottling, as days of the calendar. */
import { instantMs, instantText } from '../log/instant.ts';

/** Carbonated; settled; what dark sugar does with age (common practice, no source). */
export const reminderWeeks = [2, 6, 12] as const;

const dayMs = 86_400_000;

export interface Reminder {
  readonly weeks: number;
  /** `YYYY-MM-DD`. */
  readonly day: string;
}

/**
 * @param bottledOn `YYYY-MM-DD`
 * @throws RangeError for a day that does not exist
 */
export function remindersFrom(bottledOn: string): readonly Reminder[] {
  return reminderWeeks.map((weeks) => ({ weeks, day: dayAfter(bottledOn, 7 * weeks) }));
}

/** The day so many days after another; counted in days, so that no change of clocks moves it. */
export function dayAfter(day: string, days: number): string {
  return instantText(midnightMs(day) + days * dayMs).slice(0, 10);
}

/** Weeks from one day to another, below 0 when it is earlier. */
export function weeksBetween(from: string, to: string): number {
  return (midnightMs(to) - midnightMs(from)) / (7 * dayMs);
}

function midnightMs(day: string): number {
  return instantMs(`${day}T00:00:00.000Z`);
}
