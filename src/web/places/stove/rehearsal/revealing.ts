/** What is shown after the pour: what was hidden, and how the cook was led. */
import type { Rehearsal } from '../../../../core/advice/rehearsal.ts';
import { type Reveal, revealOf } from '../../../../core/advice/reveal.ts';

/** How the cook was led: time to the pour, readings in holds and those in the band, and what it took. */
interface Score {
  readonly cookS: number;
  readonly looks: number;
  readonly inBand: number;
  readonly spoonfuls: number;
  readonly turns: number;
}

export interface Revealing extends Reveal {
  readonly score: Score;
}

export function revealingOf(rehearsal: Rehearsal): Revealing {
  const { deeds, holds, timeS, cook } = rehearsal;
  const { kit, charge } = cook.followed;
  const spoonfuls = deeds.reduce((sum, { deed }) => sum + (deed.kind === 'water' ? deed.spoonfuls : 0), 0);
  const turns = deeds.filter(({ deed }) => deed.kind === 'heat').length;
  return { ...revealOf(rehearsal, kit, charge), score: { cookS: timeS, ...holds, spoonfuls, turns } };
}
