/** The days on which a glass asks to be tasted, for a calendar. */
import type { GlassRecord } from '../../api/glass.ts';
import { remindersFrom } from '../../core/beer/reminders.ts';
import { descriptors } from '../../core/lot/taste.ts';
import { type CalendarDay, icalendar } from './icalendar.ts';

/** None before the beer was bottled. */
export function tastingCalendar({ id, version, updated, glass }: GlassRecord): string | undefined {
  if (glass.bottledOn === null) return undefined;
  const days = remindersFrom(glass.bottledOn).map(
    ({ weeks, day }): CalendarDay => ({
      uid: `${id}-${weeks}-weeks@umberpan`,
      sequence: version - 1,
      day,
      summary: `Taste ${glass.name}: ${weeks} weeks in the bottle`,
      description: `Bottled on ${glass.bottledOn}.\nWords to go by: ${descriptors.join(', ')}.\nWrite it down in Umberpan, at Glass.`,
    }),
  );
  return icalendar(days, updated);
}
