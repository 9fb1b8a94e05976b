/** Thermal doses: what each step of a cook was worth as minutes at one temperature, so that cooks can be laid beside each other. */
import { minuteWorth } from '../advice/progress.ts';
import type { StepKind } from '../pan/steps.ts';
import type { Doings, Shown } from './doings.ts';

/** Temperatures that minutes are counted at, C: usual middles of the bands (common practice, no source). */
export const invertingAtC = 130;
export const browningAtC = 140;

/** One step as it went. Minutes at 130 C count as inversion does (109 kJ/mol), those at 140 C as pigment does (92 kJ/mol). */
export interface StepDose {
  readonly kind: StepKind;
  readonly startS: number;
  readonly minutes: number;
  /** Mean and highest of what the thermometer showed, C; null when nothing was read. */
  readonly meanC: number | null;
  readonly hottestC: number | null;
  readonly invertingMinutes: number;
  readonly browningMinutes: number;
  readonly spoonfuls: number;
}

/** Readings further apart than this tell nothing of the time between them, s: nobody knows how hot it was. */
const longestGapS = 300;

export function dosesOf({ spans, shown, deeds }: Doings): readonly StepDose[] {
  return spans.map(({ kind, startS, endS }) => {
    const read = shown.filter(({ timeS }) => timeS >= startS && timeS <= endS);
    const stretches = stretchesOf(shown, startS, endS);
    const seconds = stretches.reduce((sum, each) => sum + each.seconds, 0);
    const over = (worth: (meanC: number) => number) =>
      stretches.reduce((sum, { meanC, seconds: s }) => sum + worth(meanC) * s, 0);
    const inStep = deeds.filter(({ timeS }) => timeS >= startS && timeS < endS);
    return {
      kind,
      startS,
      minutes: (endS - startS) / 60,
      meanC: seconds > 0 ? over((meanC) => meanC) / seconds : (read[0]?.valueC ?? null),
      hottestC: read.length > 0 ? Math.max(...read.map(({ valueC }) => valueC)) : null,
      invertingMinutes: over((meanC) => minuteWorth('invert', meanC, invertingAtC)) / 60,
      browningMinutes: over((meanC) => minuteWorth('brown', meanC, browningAtC)) / 60,
      spoonfuls: inStep.reduce((sum, { deed }) => sum + (deed.kind === 'water' ? deed.spoonfuls : 0), 0),
    };
  });
}

/** Between each two readings, as far as that lies within a time: how long, and how hot in the middle. */
function stretchesOf(shown: readonly Shown[], startS: number, endS: number) {
  return shown.slice(1).flatMap((to, i) => {
    const from = shown[i];
    const apartS = to.timeS - from.timeS;
    const [a, b] = [Math.max(startS, from.timeS), Math.min(endS, to.timeS)];
    if (b <= a || apartS > longestGapS) return [];
    const middle = ((a + b) / 2 - from.timeS) / apartS;
    return [{ seconds: b - a, meanC: from.valueC + middle * (to.valueC - from.valueC) }];
  });
}
