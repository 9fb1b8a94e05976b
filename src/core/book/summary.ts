/** A cook in short: its small pan line and what it landed at. Derived from the log by the twin, and the same each time it is. */
import type { Belief, Followed } from '../advice/followed.ts';
import { believedColour } from '../colour/pool.ts';
import type { CookState } from '../log/fold.ts';
import type { StepKind } from '../pan/steps.ts';
import { type Fact, factsOf } from './differences.ts';
import { doingsOf } from './doings.ts';
import { type Landed, landedOf } from './landed.ts';

/** Goes up whenever a summary would come out otherwise: kept ones are then derived anew. */
export const summaryForm = 2;

export interface Summary {
  readonly endS: number;
  readonly poured: boolean;
  readonly landed: Landed | null;
  readonly hottestC: number | null;
  readonly readings: number;
  readonly spoonfuls: number;
  readonly steps: readonly { readonly kind: StepKind; readonly startS: number }[];
  /** What the twin believed, at times that are nearly even; of every few of them the syrup's colour as a film (CSS). */
  readonly line: {
    readonly timeS: readonly number[];
    readonly celsius: readonly number[];
    readonly colours: readonly string[];
  };
  readonly facts: readonly Fact[];
}

/** As many as a picture can show in which several cooks lie over one another. */
const linePoints = 97;
export const pointsAColour = 4;

export function summaryOf(state: CookState, followed: Followed): Summary {
  const { endS, poured, spans, shown, deeds } = doingsOf(state);
  const rows = spread(followed.beliefs, linePoints);
  const landed = landedOf(followed) ?? null;
  return {
    endS: Math.round(endS),
    poured,
    landed,
    hottestC: shown.length > 0 ? shown.reduce((most, { valueC }) => Math.max(most, valueC), -1e9) : null,
    readings: shown.length,
    spoonfuls: deeds.reduce((sum, { deed }) => sum + (deed.kind === 'water' ? deed.spoonfuls : 0), 0),
    steps: spans.map(({ kind, startS }) => ({ kind, startS: Math.round(startS) })),
    line: {
      timeS: rows.map(({ timeS }) => timeS),
      celsius: rows.map(({ believedC }) => Math.round(10 * believedC.mid) / 10),
      colours: rows
        .filter((_, i) => i % pointsAColour === 0)
        .map(({ unseen }) => believedColour(unseen.a430.mid, unseen.waterShare.mid)),
    },
    facts: factsOf(state, landed),
  };
}

/** The rows nearest to evenly spaced times, the first and the last among them. */
function spread(rows: readonly Belief[], count: number): readonly Belief[] {
  const endS = rows.at(-1)?.timeS ?? 0;
  let at = 0;
  return Array.from({ length: count }, (_, i) => {
    while (at < rows.length - 1 && rows[at].timeS < (i * endS) / (count - 1)) at++;
    return rows[at];
  }).filter((row, i, all) => row !== all[i - 1]);
}
