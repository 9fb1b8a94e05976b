/** How far the cooling of a burn has come: 20 minutes under cool running water (CARE-BURN-1). It is kept, so that a reload loses nothing. */

export const coolingMs = 20 * 60_000;
/** A cooling that ended longer ago than this is forgotten, ms: running water helps up to 3 hours after a burn (CARE-BURN-1). */
const forgottenMs = 3 * 3_600_000;

/** @returns ms left, 0 when it is done; nothing when none was begun, or long ago, or by a clock that has since been put back */
export function coolingLeft(begun: number | undefined, now: number): number | undefined {
  if (begun === undefined || !Number.isFinite(begun)) return undefined;
  const gone = now - begun;
  // A clock put back a little still counts from the full time: too long is the safe side.
  if (gone < -coolingMs || gone > coolingMs + forgottenMs) return undefined;
  return Math.min(coolingMs, Math.max(0, coolingMs - gone));
}

/** `19:04`. */
export function minutesAndSeconds(ms: number): string {
  const seconds = Math.ceil(ms / 1000);
  return `${Math.floor(seconds / 60)}:${String(seconds % 60).padStart(2, '0')}`;
}

/** What a screen reader is told, not every second but every five minutes and in the last one. */
export function saidOf(ms: number): string {
  if (ms <= 0) return 'Twenty minutes are over.';
  const minutes = Math.ceil(ms / 60_000);
  return minutes === 1 ? 'The last minute.' : `${Math.ceil(minutes / 5) * 5} minutes or less to go.`;
}
