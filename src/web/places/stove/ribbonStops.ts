/** The colours along the ribbon of a cook so far, as stops of a gradient from its first row to its last. */
import type { Row } from './view.ts';

export interface Stop {
  readonly timeS: number;
  /** Share of the way, 0 to 1. */
  readonly offset: number;
  readonly colour: string;
}

/** Colours along the ribbon: one each so many rows is enough. */
const paintEvery = 6;

/** @returns none before any time has passed: also while the cook's beginning lies ahead of this device's clock */
export function ribbonStops(rows: readonly Pick<Row, 'timeS' | 'colour'>[]): readonly Stop[] {
  const last = rows.at(-1);
  if (!last) return [];
  const fromS = rows[0].timeS;
  const takesS = last.timeS - fromS;
  if (takesS <= 0) return [];
  const painted = rows.filter((row, i) => i % paintEvery === 0 || row === last);
  // Of two rows at one time, the later knows more.
  const colours = new Map(painted.map(({ timeS, colour }) => [timeS, colour]));
  return [...colours].map(([timeS, colour]) => ({ timeS, offset: (timeS - fromS) / takesS, colour }));
}
