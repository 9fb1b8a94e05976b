/** A rehearsal when it is over: how it ended and was led, and what was hidden. */
import type { Rehearsal } from '../../core/advice/rehearsal.ts';
import { type Reveal, revealOf } from '../../core/advice/reveal.ts';
import type { Planning } from '../plan/makePlan.ts';

export interface Led {
  readonly seed: number;
  readonly members: number;
  /** Who cooked had enough. */
  readonly left: boolean;
}

export interface Ended extends Planning, Led {
  readonly ending: 'poured' | 'left' | 'out of time';
  readonly rehearsal: Rehearsal;
  readonly spoonfuls: number;
  readonly turns: number;
  /** Share of the readings in holds that found the hidden pan in its band; undefined when no hold was reached. */
  readonly inBand: number | undefined;
  readonly reveal: Reveal;
}

export function endedOf(planning: Planning, rehearsal: Rehearsal, led: Led): Ended {
  const { timeS, twin, progress, deeds, holds } = rehearsal;
  // Who leaves between two readings leaves the twin behind.
  twin.moveTo(timeS);
  return {
    ...planning,
    ...led,
    rehearsal,
    ending: progress.poured ? 'poured' : led.left ? 'left' : 'out of time',
    spoonfuls: deeds.reduce((sum, { deed }) => sum + (deed.kind === 'water' ? deed.spoonfuls : 0), 0),
    turns: deeds.filter(({ deed }) => deed.kind === 'heat').length,
    inBand: holds.looks > 0 ? holds.inBand / holds.looks : undefined,
    reveal: revealOf(rehearsal, planning.kit, planning.plan.amounts.charge),
  };
}
