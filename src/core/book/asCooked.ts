/**
 * A cook as a recipe: what went in, how hot each step really was and how long it was really held, as the log tells. So the model can cook
 * it again, and cook it with one thing taken from another cook.
 */
import type { CookState } from '../log/fold.ts';
import type { StepSpan } from '../pan/course.ts';
import type { Kit } from '../pan/kit.ts';
import { centralValues } from '../pan/model.ts';
import { type PreparedKit, prepareKit } from '../pan/preparedKit.ts';
import { simulate } from '../pan/simulate.ts';
import type { AlkaliPart, Charge, Step } from '../pan/steps.ts';
import { doingsOf, type Shown } from './doings.ts';

export interface AsCooked {
  readonly kit: Kit;
  readonly prepared: PreparedKit;
  readonly charge: Charge;
  readonly steps: readonly Step[];
}

/** The person of a simulation holds a band a little above or below its middle: so often its bands are moved, so that the holds come right. */
const rounds = 2;
const furthestMoveK = 6;
const rowS = 5;
/** Where a step ended is read from the readings of so long, s: some, so that the noise of one counts less; not more, since it climbs. */
const alikeS = 30;

/** @returns nothing for a log without a beginning, or without readings in its steps */
export function asCooked(state: CookState): AsCooked | undefined {
  const { begun } = state;
  if (!begun) return undefined;
  const { spans, shown } = doingsOf(state);
  const { kit, steps, amounts } = begun.body;
  if (shown.length < 3) return undefined;
  const alkali = state.deeds.flatMap((entry) => (entry.kind === 'alkali' ? [entry] : []));
  const done = spans.flatMap((span): Step[] => {
    const { index, startS, endS } = span;
    const parts = alkali.filter(({ timeS }) => timeS >= startS && timeS < endS).map(({ body }) => partOf(body));
    const step = stepAsDone({ ...steps[index], alkali: parts }, within(shown, span));
    return step ? [step] : [];
  });
  if (done.length === 0) return undefined;
  const prepared = prepareKit(kit);
  const { charge } = amounts;
  return { kit, prepared, charge, steps: moved(done, charge, prepared) };
}

const partOf = ({ substance, alkaliKg, waterKg }: AlkaliPart): AlkaliPart => ({ substance, alkaliKg, waterKg });

const within = (shown: readonly Shown[], { startS, endS }: Pick<StepSpan, 'startS' | 'endS'>): readonly Shown[] =>
  shown.filter(({ timeS }) => timeS >= startS && timeS <= endS);

/** A step that was over before anything was read has nothing to go by. */
function stepAsDone(step: Step, shown: readonly Shown[]): Step | undefined {
  const last = shown.at(-1);
  if (!last) return undefined;
  if (step.letDown) return step;
  if ('reachedC' in step.end) {
    return { ...step, end: { reachedC: middleOf(shown.filter(({ timeS }) => timeS > last.timeS - alikeS)) } };
  }
  const held = holdIn(shown, step.bandC[0]);
  // It never came up to its band: all that is known is how hot it got.
  if (!held) return { ...bandAt(step, Math.max(...shown.map(({ valueC }) => valueC))), end: { heldMinutes: 0 } };
  return { ...bandAt(step, held.meanC), end: { heldMinutes: (last.timeS - held.fromS) / 60 } };
}

const middleOf = (shown: readonly Shown[]): number =>
  shown.map(({ valueC }) => valueC).toSorted((a, b) => a - b)[(shown.length - 1) >> 1];

function bandAt(step: Step, middleC: number): Step {
  const half = (step.bandC[1] - step.bandC[0]) / 2;
  return { ...step, bandC: [middleC - half, middleC + half] };
}

/** From when the thermometer first showed the band's lower edge: when that was, and the mean since. */
function holdIn(shown: readonly Shown[], lowC: number): { readonly fromS: number; readonly meanC: number } | undefined {
  const from = shown.findIndex(({ valueC }) => valueC >= lowC);
  if (from < 0) return undefined;
  const held = shown.slice(from);
  let sum = 0;
  for (let i = 1; i < held.length; i++) {
    sum += ((held[i].valueC + held[i - 1].valueC) / 2) * (held[i].timeS - held[i - 1].timeS);
  }
  const fromS = held[0].timeS;
  const seconds = held[held.length - 1].timeS - fromS;
  return { fromS, meanC: seconds > 0 ? sum / seconds : held[0].valueC };
}

/** The steps with their bands moved so that a simulated person's holds are as hot as the real ones. */
function moved(steps: readonly Step[], charge: Charge, prepared: PreparedKit): readonly Step[] {
  const wantedC = steps.map(({ bandC }) => (bandC[0] + bandC[1]) / 2);
  const values = centralValues(prepared.kit);
  let now = steps;
  for (let round = 0; round < rounds; round++) {
    const course = simulate({ charge, steps: now }, prepared, values, { everyS: rowS, tolerance: 1e-3 });
    const rows = Array.from(course.timeS, (timeS, i): Shown => ({ timeS, valueC: course.readingC[i] }));
    now = now.map((step, i) => {
      const span = course.steps[i];
      if (!span || step.letDown || 'reachedC' in step.end || step.end.heldMinutes === 0) return step;
      const held = holdIn(within(rows, span), step.bandC[0]);
      if (!held) return step;
      const middleC = (step.bandC[0] + step.bandC[1]) / 2 + wantedC[i] - held.meanC;
      return bandAt(step, Math.min(wantedC[i] + furthestMoveK, Math.max(wantedC[i] - furthestMoveK, middleC)));
    });
  }
  return now;
}
