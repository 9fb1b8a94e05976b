/** How long to wait before trying to reach the server again. */

const leastMs = 500;
const mostMs = 10_000;

/**
 * Half a second at first, twice as long after each failure, up to ten seconds; less up to a half of it, so that devices that
 * lost the server together do not all come back at one moment.
 * @param failures tries that failed before, in a row
 * @param random 0 to 1
 */
export function backoffMs(failures: number, random: number): number {
  return Math.max(leastMs, Math.min(mostMs, leastMs * 2 ** failures) * (1 - random / 2));
}
