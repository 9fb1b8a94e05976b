/** When to taste again, as a list and as a file for a calendar. */
import { remindersFrom, reminderWeeks } from '../../../core/beer/reminders.ts';
import { dayText } from '../../parts/dayText.ts';

interface RemindersProps {
  readonly bottledOn: string | null;
  /** The kept glass that is just as this one. */
  readonly keptId: string | undefined;
}

export function Reminders({ bottledOn, keptId }: RemindersProps) {
  if (bottledOn === null) {
    return (
      <p className="quiet">
        Say when it was bottled, and here stands when to taste it: after {reminderWeeks.slice(0, -1).join(', ')} and{' '}
        {reminderWeeks.at(-1)} weeks.
      </p>
    );
  }
  return (
    <div className="reminders">
      <ul>
        {remindersFrom(bottledOn).map(({ weeks, day }) => (
          <li key={weeks}>
            {weeks} weeks: <time dateTime={day}>{dayText(day)}</time>
          </li>
        ))}
      </ul>
      {keptId === undefined ? (
        <p className="quiet small">Keep the glass to have them for a calendar.</p>
      ) : (
        <a className="button" href={`/api/glasses/${keptId}/reminders.ics`} download="tastings.ics">
          For a calendar (ICS)
        </a>
      )}
    </div>
  );
}
