/**
 * The twin on simulated cooks with hidden kits: how often its 10-90 % bands hold the truth, how far it is off, and how much the
 * readings gain against no readings and against the belief that nothing changes. `COOKS=500 npm run bench twin` for the full table.
 */

import { courseColour } from '../src/core/colour/courseColour.ts';
import { ratingA430 } from '../src/core/colour/rating.ts';
import { advance } from '../src/core/pan/advance.ts';
import { type Course, inverted, waterShare } from '../src/core/pan/course.ts';
import { perform, spoonFill } from '../src/core/pan/deeds.ts';
import { drawnValues } from '../src/core/pan/model.ts';
import type { ModelValues, Pan } from '../src/core/pan/physics.ts';
import { simulate } from '../src/core/pan/simulate.ts';
import { normalNumbers } from '../src/core/reactions/normal.ts';
import { rangeOf } from '../src/core/twin/range.ts';
import { createTwin, type Twin, type TwinEvent } from '../src/core/twin/twin.ts';
import { unseenOf } from '../src/core/twin/unseen.ts';
import { type Cook, cookOf } from './measure/referenceCook.ts';
import { publish, ratio, table } from './measure/report.ts';

const cooks = Number(process.env['COOKS'] ?? 40);
const members = Number(process.env['MEMBERS'] ?? 256);
/** Hidden parameters are drawn this much wider than their stated spread; readings each 10 s with this noise, C. */
const hiddenWidening = 1.25;
const noiseC = 0.4;
const readEveryS = 10;
const judgeEveryS = 120;
const aheadS = 60;

const quantities = ['temperature, C', 'water, %', 'inverted, %', 'ln colour'] as const;
type Quantity = (typeof quantities)[number];

/** Sums over the judged moments of one step. */
interface Tally {
  count: number;
  judged: Record<Quantity, number>;
  inside: Record<Quantity, number>;
  squares: Record<Quantity, number>;
  blind: Record<Quantity, number>;
  persistence: number;
}

const zero = (): Record<Quantity, number> => ({ 'temperature, C': 0, 'water, %': 0, 'inverted, %': 0, 'ln colour': 0 });
/** Colour fainter than 0.1 EBC is not judged: there is none yet. */
const faintest = Math.log(0.004 + 1e-3);
const lnColour = (a430: number): number => Math.log(a430 + 1e-3);

/** One hidden kit cooked by a person with the thermometer alone, and what a twin would be told of it. */
function hiddenCook({ prepared, recipe }: Cook, seed: number) {
  const { kit } = prepared;
  const normal = normalNumbers(seed * 13);
  const values = drawnValues(kit, () => hiddenWidening * normal());
  const course = simulate(recipe, prepared, values, { normal });
  const noise = normalNumbers(seed * 17 + 1);
  const told: TwinEvent[] = course.deeds
    .filter(({ deed }) => deed.kind !== 'step' && deed.kind !== 'pour')
    .map(({ timeS, deed }) =>
      deed.kind === 'water' && deed.spoonfuls > 0
        ? { timeS, deed: { ...deed, waterKg: deed.spoonfuls * kit.spoonM3 * 1000 } }
        : { timeS, deed },
    );
  for (let t = readEveryS; t < course.timeS.length; t += readEveryS) {
    const valueC = course.readingC[t] + noiseC * noise();
    told.push({ timeS: t, observation: { kind: 'reading', valueC, byHand: false } });
  }
  return { course, values, told: told.sort((a, b) => a.timeS - b.timeS) };
}

/** The truth each second. */
function truthOf(course: Course, values: ModelValues): (row: number) => Record<Quantity, number> {
  const water = waterShare(course);
  const share = inverted(course);
  const colour = courseColour(course, values.absorptivity420).specific430;
  return (row) => ({
    'temperature, C': course.temperatureC[row],
    'water, %': 100 * water[row],
    'inverted, %': 100 * share[row],
    'ln colour': lnColour(ratingA430(colour[row], 'tenPercentByWeight')),
  });
}

/** What the members expect a while ahead, with the deeds that really followed. */
function ahead(twin: Twin, told: readonly TwinEvent[], { prepared, recipe }: Cook, seed: number) {
  const from = twin.timeS;
  const noise = normalNumbers(seed);
  const deeds = told.flatMap((e) => ('deed' in e && e.timeS > from && e.timeS <= from + aheadS ? [e] : []));
  const found = Object.fromEntries(quantities.map((q) => [q, [] as number[]])) as Record<Quantity, number[]>;
  for (const { y, pan } of twin.copies(members)) {
    carry(pan, y, from, deeds, () => spoonFill(0.2, noise), prepared.kit);
    const {
      waterShare: water,
      inverted: share,
      a430,
    } = unseenOf({ y, values: pan.values, ph: pan.view.ph }, recipe.charge);
    found['temperature, C'].push(pan.view.temperatureC);
    found['water, %'].push(100 * water);
    found['inverted, %'].push(100 * share);
    found['ln colour'].push(lnColour(a430));
  }
  return found;
}

type DeedEvent = Extract<TwinEvent, { readonly deed: unknown }>;

function carry(
  pan: Pan,
  y: Float64Array,
  fromS: number,
  deeds: readonly DeedEvent[],
  scatter: () => number,
  kit: Cook['prepared']['kit'],
) {
  let at = fromS;
  for (const { timeS, deed } of deeds) {
    advance(pan, y, timeS - at, 3e-4);
    perform(deed, y, pan, kit, scatter());
    at = timeS;
  }
  advance(pan, y, fromS + aheadS - at, 3e-4);
}

function judge(cook: Cook, seed: number, tallies: Map<string, Tally>): void {
  const { course, values, told } = hiddenCook(cook, seed);
  const truth = truthOf(course, values);
  const twin = createTwin(cook.prepared, cook.recipe.charge, { members, seed });
  const blind = createTwin(cook.prepared, cook.recipe.charge, { members, seed });
  let nextS = judgeEveryS;
  for (const event of told) {
    twin.take(event);
    if ('deed' in event) blind.take(event);
    if (event.timeS < nextS || 'deed' in event) continue;
    nextS += judgeEveryS;
    const row = Math.floor(event.timeS + aheadS);
    if (row >= course.timeS.length) return;
    blind.moveTo(event.timeS);
    const kind = course.steps.find(({ endS }) => endS >= row)?.kind ?? 'roast';
    const tally = tallies.get(kind) ?? {
      count: 0,
      judged: zero(),
      inside: zero(),
      squares: zero(),
      blind: zero(),
      persistence: 0,
    };
    tallies.set(kind, tally);
    const now = truth(row);
    const believed = ahead(twin, told, cook, seed + row);
    const unread = ahead(blind, told, cook, seed + row);
    tally.count++;
    for (const q of quantities) {
      if (q === 'ln colour' && now[q] < faintest) continue;
      tally.judged[q]++;
      const { low, mid, high } = rangeOf(believed[q]);
      if (now[q] >= low && now[q] <= high) tally.inside[q]++;
      tally.squares[q] += (now[q] - mid) ** 2;
      tally.blind[q] += (now[q] - rangeOf(unread[q]).mid) ** 2;
    }
    const reading =
      'observation' in event && event.observation.kind === 'reading' ? event.observation.valueC : Number.NaN;
    tally.persistence += (now['temperature, C'] - reading) ** 2;
  }
}

const cook = cookOf({});
const tallies = new Map<string, Tally>();
for (let seed = 1; seed <= cooks; seed++) judge(cook, seed, tallies);

const percent = (value: number) => `${(100 * value).toFixed(0)} %`;
const rows = [...tallies].flatMap(([kind, t]) =>
  quantities
    .filter((q) => t.judged[q] > 0)
    .map((q) => [
      kind,
      q,
      String(t.judged[q]),
      percent(t.inside[q] / t.judged[q]),
      Math.sqrt(t.squares[q] / t.judged[q]).toFixed(2),
      ratio(Math.sqrt(t.squares[q] / t.blind[q])),
      q === 'temperature, C' ? ratio(Math.sqrt(t.squares[q] / t.persistence)) : '',
    ]),
);
const all = quantities.map((q) => {
  const sum = (of: (t: Tally) => number) => [...tallies.values()].reduce((total, t) => total + of(t), 0);
  return [q, percent(sum((t) => t.inside[q]) / sum((t) => t.judged[q]))];
});
publish('twin', 'Twin', [
  `${cooks} cooks of the Desk's first request, hidden kits drawn ${hiddenWidening} times wider than stated, ${members} members, a reading each ${readEveryS} s with ${noiseC} C of noise. Judged ${aheadS} s ahead each ${judgeEveryS} s, with the deeds that followed; no colour, pH or weight is told. The bar: bands hold the truth 76-84 % of the time. Ratios of root mean square errors: against a twin that hears no readings, and against the last reading.`,
  table(['quantity', 'held, all steps'], all),
  table(['step', 'quantity', 'moments', 'held', 'error', 'against no readings', 'against persistence'], rows),
]);
