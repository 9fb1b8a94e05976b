/** Days of the calendar in the browser's own zone. */

/** The day that it is here, `YYYY-MM-DD`. */
export function dayHere(now: Date): string {
  const two = (value: number) => String(value).padStart(2, '0');
  return `${now.getFullYear()}-${two(now.getMonth() + 1)}-${two(now.getDate())}`;
}

/** A time on a day here: now on today, noon on any other. */
export function timeOn(day: string, now: Date): string {
  return (day === dayHere(now) ? now : new Date(`${day}T12:00:00`)).toISOString();
}
