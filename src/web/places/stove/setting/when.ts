/** Where a milestone stands at a moment, and how it is said. */
import type { Range } from '../../../../core/twin/range.ts';
import { timeText } from '../../../parts/dayText.ts';
import { clock } from '../../../parts/figures.ts';

export type Standing = 'ahead' | 'near' | 'by now';

export interface When {
  readonly standing: Standing;
  readonly says: string;
  /** Between which times of day. */
  readonly between: string;
}

const minuteMs = 60_000;

/** @param timeOfDay writes a time in ms since 1970 as the clock on the wall shows it */
export function whenOf(
  minutes: Range,
  pouredMs: number,
  nowMs: number,
  timeOfDay: (ms: number) => string = wallClock,
): When {
  const elapsed = (nowMs - pouredMs) / minuteMs;
  const at = (mark: keyof Range) => timeOfDay(pouredMs + minutes[mark] * minuteMs);
  const between = `${at('low')} to ${at('high')}`;
  if (elapsed < minutes.low)
    return { standing: 'ahead', says: `in ${clock(atLeastOne(minutes.mid - elapsed))}`, between };
  if (elapsed < minutes.high) return { standing: 'near', says: 'may be so by now', between };
  return { standing: 'by now', says: 'should be so by now', between };
}

const atLeastOne = (minutes: number): number => Math.max(1, minutes);

const wallClock = (ms: number): string => timeText(new Date(ms).toISOString());
