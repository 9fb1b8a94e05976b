/** Times one reading taken in by the twin, and a forecast of ten minutes with bands, along a hidden cook. Runs in Node and in a page. */
import { advance } from '../../src/core/pan/advance.ts';
import { type Range, rangeOf } from '../../src/core/twin/range.ts';
import { createTwin, type Twin, type TwinEvent } from '../../src/core/twin/twin.ts';
import { type Unseen, unseenRanges } from '../../src/core/twin/unseen.ts';
import { hiddenCook } from './hiddenCook.ts';
import { type Cook, cookOf } from './referenceCook.ts';

export interface ReadingRun {
  readonly members: number;
  /** Members that the forecast carries on. */
  readonly carried: number;
  /** How much of the cook is gone through, and how often; the quickest time through counts. */
  readonly minutes: number;
  readonly repeats: number;
}

/** Time of each reading, and of a forecast each four minutes, ms. */
export interface ReadingTimes {
  readonly readingMs: readonly number[];
  readonly forecastMs: readonly number[];
}

const rowS = 60;
const rows = 10;
const forecastEveryS = 240;
/** As in the outlook of the advice. */
const tolerance = 1e-3;

type Bands = Unseen<Range> & { readonly temperatureC: Range };

/** Bands of temperature and of all that is unseen, a row a minute, with the ring as it stands. */
function forecast(twin: Twin, { recipe }: Cook, carried: number): readonly Bands[] {
  const copies = twin
    .copies(carried)
    .map(({ y, pan }) => ({ y, pan, values: pan.values, ph: 7, temperatureC: 20, stepS: 10 }));
  return Array.from({ length: rows }, () => {
    for (const copy of copies) {
      copy.stepS = advance(copy.pan, copy.y, rowS, tolerance, copy.stepS);
      copy.ph = copy.pan.view.ph;
      copy.temperatureC = copy.pan.view.temperatureC;
    }
    return { temperatureC: rangeOf(copies.map((copy) => copy.temperatureC)), ...unseenRanges(copies, recipe.charge) };
  });
}

function once(cook: Cook, told: readonly TwinEvent[], { members, carried }: ReadingRun): ReadingTimes {
  const twin = createTwin(cook.prepared, cook.recipe.charge, { members, seed: 1 });
  const readingMs: number[] = [];
  const forecastMs: number[] = [];
  for (const event of told) {
    const begun = performance.now();
    twin.take(event);
    const taken = performance.now();
    if ('deed' in event) continue;
    readingMs.push(taken - begun);
    if (event.timeS % forecastEveryS !== 0) continue;
    const asked = performance.now();
    forecast(twin, cook, carried);
    forecastMs.push(performance.now() - asked);
  }
  return { readingMs, forecastMs };
}

export const meanOf = (values: readonly number[]): number => values.reduce((sum, one) => sum + one, 0) / values.length;

/** A slowed thread stands still now and then, for longer than a reading takes: only whole cooks can be compared. */
export function readingTimes(run: ReadingRun): ReadingTimes {
  const cook = cookOf({});
  const told = hiddenCook(cook, 1).told.filter(({ timeS }) => timeS <= run.minutes * 60);
  const times = Array.from({ length: run.repeats }, () => once(cook, told, run));
  const quickest = (of: (one: ReadingTimes) => readonly number[]) =>
    times.map(of).reduce((best, one) => (meanOf(one) < meanOf(best) ? one : best));
  return { readingMs: quickest((one) => one.readingMs), forecastMs: quickest((one) => one.forecastMs) };
}
