/**
 * Learning on hidden kitchens, cook after cook: how far the next cook is foretold, from its deeds alone, by what was learned so far; how
 * often the ranges of what was learned hold the truth; and how many cooks were refused that should not have been. `KITCHENS=30 npm run bench learn`;
 * interrupted (Ctrl+C), it reports the kitchens that it has judged by then.
 */

import { kitchenNumbers } from '../src/core/learn/changes.ts';
import { knownOf, widening } from '../src/core/learn/knowledge.ts';
import { learnFrom } from '../src/core/learn/learn.ts';
import { advance } from '../src/core/pan/advance.ts';
import { filledPan, perform } from '../src/core/pan/deeds.ts';
import type { Kit } from '../src/core/pan/kit.ts';
import { kitParameters } from '../src/core/pan/kitParameters.ts';
import { centralValues } from '../src/core/pan/model.ts';
import { createPan, type ModelParameter, type ModelValues } from '../src/core/pan/physics.ts';
import { contentsKg, place } from '../src/core/pan/state.ts';
import { valueAt } from '../src/core/reactions/parameter.ts';
import { a430Of } from '../src/core/twin/observe.ts';
import { noiseC, readEveryS } from './measure/hiddenCook.ts';
import { type Cooked, cookedIn, cooks, hiddenValues } from './measure/kitchen.ts';
import type { Cook } from './measure/referenceCook.ts';
import { publish, table } from './measure/report.ts';
import { sharedOut } from './measure/sharedOut.ts';

const kitchens = Number(process.env['KITCHENS'] ?? 6);
/** By how much a log counts less was chosen on kitchens 1 to 12 and 101 to 130; these are others. */
const firstKitchen = 201;
const judgeEveryS = 60;
const score80 = 1.2816;

const quantities = ['temperature, C', 'water, %', 'ln colour'] as const;
type Errors = Record<(typeof quantities)[number], number>;

/** Root mean square errors of a cook foretold with these values from its deeds, each spoon as full as it really was. */
function foretold({ prepared, recipe }: Cook, { course, truth }: Cooked, values: ModelValues): Errors {
  const pan = createPan(prepared, values);
  const y = filledPan(recipe.charge, prepared.kit, values);
  const deeds = course.deeds.filter(({ deed }) => deed.kind !== 'step' && deed.kind !== 'pour');
  const squares: Errors = { 'temperature, C': 0, 'water, %': 0, 'ln colour': 0 };
  let looks = 0;
  let coloured = 0;
  let done = 0;
  let at = 0;
  pan.derivatives(y, new Float64Array(y.length));
  for (let t = judgeEveryS; t < truth.temperatureC.length; t += judgeEveryS) {
    for (; done < deeds.length && deeds[done].timeS <= t; done++) {
      advance(pan, y, deeds[done].timeS - at, 3e-5);
      at = deeds[done].timeS;
      perform(deeds[done].deed, y, pan, prepared.kit);
    }
    advance(pan, y, t - at, 3e-5);
    at = t;
    looks++;
    squares['temperature, C'] += (pan.view.temperatureC - truth.temperatureC[t]) ** 2;
    squares['water, %'] += (100 * (y[place.waterKg] / contentsKg(y) - truth.waterShare[t])) ** 2;
    if (truth.a430[t] < 0.004) continue;
    coloured++;
    squares['ln colour'] += Math.log((a430Of({ y, values }) + 1e-3) / (truth.a430[t] + 1e-3)) ** 2;
  }
  return {
    'temperature, C': Math.sqrt(squares['temperature, C'] / looks),
    'water, %': Math.sqrt(squares['water, %'] / looks),
    'ln colour': Math.sqrt(squares['ln colour'] / Math.max(1, coloured)),
  };
}

/** Do the 10-90 % ranges hold the truth? By name. */
function holds(kit: Kit, values: ModelValues): Record<ModelParameter, boolean> {
  const known = knownOf(kit);
  const n = known.names.length;
  return Object.fromEntries(
    known.names.map((name, i) => {
      const sd = widening * Math.hypot(...known.root.subarray(i * n, i * n + i + 1));
      const at = (z: number) => valueAt(known.stated[name], known.centre[i] + z * sd);
      return [name, values[name] >= at(-score80) && values[name] <= at(score80)];
    }),
  ) as Record<ModelParameter, boolean>;
}

interface Told {
  readonly errors: readonly Errors[];
  readonly held: readonly Record<ModelParameter, boolean>[];
  readonly refused: number;
}

function kitchen(number: number): Told {
  const values = hiddenValues(number);
  let { kit } = cooks[0].prepared;
  let refused = 0;
  const errors: Errors[] = [];
  const held: Record<ModelParameter, boolean>[] = [];
  cooks.forEach((cook, i) => {
    const cooked = cookedIn(cook, values, 100 * number + i);
    errors.push(foretold(cook, cooked, centralValues(kit)));
    if (i === cooks.length - 1) return;
    const told = { prepared: { ...cook.prepared, kit }, charge: cook.recipe.charge, events: cooked.told };
    const outcome = learnFrom(told, { name: `cook ${i + 1}` });
    if (outcome.kind === 'learned') kit = { ...kit, learned: outcome.learned };
    else refused++;
    held.push(holds(kit, values));
  });
  return { errors, held, refused };
}

const begunS = process.cpuUsage().user / 1e6;
const numbers = Array.from({ length: kitchens }, (_, i) => firstKitchen + i);
const judged = await sharedOut(import.meta.url, numbers, kitchen);
if (judged) {
  report(judged);
  process.exit();
}

function report(results: readonly Told[]): void {
  const secondsEach = (process.cpuUsage().user / 1e6 - begunS) / (5 * results.length);
  const sorted = (values: readonly number[]) => values.toSorted((a, b) => a - b);
  const mark = (values: readonly number[], share: number) =>
    sorted(values)[Math.min(values.length - 1, Math.floor(share * values.length))];
  const errorRow = (name: string, errors: readonly Errors[]) => [
    name,
    ...quantities.map((q) => {
      const each = errors.map((one) => one[q]);
      return `${mark(each, 0.5).toFixed(2)} (${mark(each, 0.9).toFixed(2)})`;
    }),
  ];
  const errorRows = cooks.map((_, learned) =>
    errorRow(
      String(learned),
      results.map(({ errors }) => errors[learned]),
    ),
  );

  const percent = (value: number) => `${(100 * value).toFixed(0)} %`;
  const share = (names: readonly ModelParameter[], after: number) => {
    const each = results.map(({ held }) => names.filter((name) => held[after][name]).length / names.length);
    const mean = each.reduce((sum, value) => sum + value, 0) / each.length;
    const error = Math.sqrt(
      each.reduce((sum, value) => sum + (value - mean) ** 2, 0) / Math.max(1, each.length - 1) / each.length,
    );
    return `${percent(mean)} (${(100 * error).toFixed(1)})`;
  };
  const kitNames = Object.keys(kitParameters(cooks[0].prepared.kit)) as ModelParameter[];
  const allNames = knownOf(cooks[0].prepared.kit).names;
  const heldRows = cooks
    .slice(1)
    .map((_, i) => [
      String(i + 1),
      share(kitNames, i),
      share(Object.keys(kitchenNumbers) as ModelParameter[], i),
      share(allNames, i),
    ]);
  const refused = results.reduce((sum, one) => sum + one.refused, 0);

  publish('learn', 'Learning', [
    `${results.length} hidden kitchens, five cooks each and a sixth that is only foretold: six different requests, cooked by a person with the thermometer alone. Every uncertain number is drawn 1.25 times wider than stated, of stove, pan, thermometer and of every reaction; spoonfuls scatter by 20 %. Told are the deeds, a reading each ${readEveryS} s with ${noiseC} C of noise, a spoon test each quarter of an hour of browning and a weighed dilution at the end. ${refused} of ${5 * results.length} cooks were refused, though nothing was wrong with them. One cook, with all that is foretold of it, took ${secondsEach.toFixed(1)} s of a core. The model that learns is the model that made the cooks: what a real pan does otherwise is not in these figures.`,
    'Error of the next cook, foretold from its deeds by the middle of what is known: root mean square over the cook, median of the kitchens (and the mark that one in ten exceeds). Each spoon is taken as full as it really was: not knowing that puts a cook foretold with every number of the kitchen known off by 1.6 C, and would hide what was learned.',
    table(['cooks learned from', ...quantities], errorRows),
    'How often 10-90 % ranges hold the truth, with the standard error over kitchens. The bar: 76-84 %.',
    table(['after cook', 'kit', 'kitchen numbers shown', 'all numbers'], heldRows),
  ]);
}
