import { advance } from '../src/core/pan/advance.ts';
import type { Course } from '../src/core/pan/course.ts';
import { perform, spoonFill } from '../src/core/pan/deeds.ts';
import type { ModelValues, Pan } from '../src/core/pan/physics.ts';
import { normalNumbers } from '../src/core/reactions/normal.ts';
import { rangeOf } from '../src/core/twin/range.ts';
import { createTwin, type Twin, type TwinEvent } from '../src/core/twin/twin.ts';
import { unseenOf } from '../src/core/twin/unseen.ts';
import { hiddenCook, hiddenWidening, noiseC, readEveryS } from './measure/hiddenCook.ts';
import { type Cook, cookOf } from './measure/referenceCook.ts';
import { publish, ratio, table } from './measure/report.ts';
import { sharedOut } from './measure/sharedOut.ts';

const cooks = Number(process.env['COOKS'] ?? 40);
const members = Number(process.env['MEMBERS'] ?? 256);
/** The twin's numbers were chosen on cooks 1 to 60 and 1001 to 1100; these are others. */
const firstSeed = 2001;
/** Only the middle of the twin without readings is used. */
const blindMembers = 64;
const judgeEveryS = 120;
/** A share of fewer moments says nothing. */
const fewest = 20;
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

/** The truth each second, by the twin's own measures: its water is a share of all that is in the pan, crystals too. */
function truthOf({ temperatureC, states, ph }: Course, values: ModelValues, { recipe }: Cook) {
  return (row: number): Record<Quantity, number> => {
    const y = Float64Array.from(states, (column) => column[row]);
    const { waterShare: water, inverted: share, a430 } = unseenOf({ y, values, ph: ph[row] }, recipe.charge);
    return {
      'temperature, C': temperatureC[row],
      'water, %': 100 * water,
      'inverted, %': 100 * share,
      'ln colour': lnColour(a430),
    };
  };
}

/** What the members expect a while ahead, with the deeds that really followed. */
function ahead(twin: Twin, told: readonly TwinEvent[], { prepared, recipe }: Cook, seed: number) {
  const from = twin.timeS;
  const noise = normalNumbers(seed);
  const deeds = told.flatMap((e) => ('deed' in e && e.timeS > from && e.timeS <= from + aheadS ? [e] : []));
  const found = Object.fromEntries(quantities.map((q) => [q, [] as number[]])) as Record<Quantity, number[]>;
  for (const { y, pan } of twin.copies(twin.members.length)) {
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

function newTally(): Tally {
  return { count: 0, judged: zero(), inside: zero(), squares: zero(), blind: zero(), persistence: 0 };
}

/** The tally of each step of one cook. */
function judge(cook: Cook, seed: number): Map<string, Tally> {
  const tallies = new Map<string, Tally>();
  const { course, values, told } = hiddenCook(cook, seed);
  const truth = truthOf(course, values, cook);
  const twin = createTwin(cook.prepared, cook.recipe.charge, { members, seed });
  const blind = createTwin(cook.prepared, cook.recipe.charge, { members: blindMembers, seed });
  let nextS = judgeEveryS;
  for (const event of told) {
    twin.take(event);
    if ('deed' in event) blind.take(event);
    if (event.timeS < nextS || 'deed' in event) continue;
    nextS += judgeEveryS;
    const row = Math.floor(event.timeS + aheadS);
    if (row >= course.timeS.length) break;
    blind.moveTo(event.timeS);
    const kind = course.steps.find(({ endS }) => endS >= row)?.kind ?? 'roast';
    const tally = tallies.get(kind) ?? newTally();
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
  return tallies;
}

function sumOf(tallies: readonly Tally[]): Tally {
  const sum = newTally();
  for (const tally of tallies) {
    sum.count += tally.count;
    sum.persistence += tally.persistence;
    for (const part of ['judged', 'inside', 'squares', 'blind'] as const) {
      for (const q of quantities) sum[part][q] += tally[part][q];
    }
  }
  return sum;
}

const cook = cookOf({});
const begunS = process.cpuUsage().user / 1e6;
const seeds = Array.from({ length: cooks }, (_, i) => firstSeed + i);
const judgedCooks = await sharedOut(import.meta.url, seeds, (seed) => judge(cook, seed));
if (judgedCooks) {
  report(judgedCooks);
}

function report(judged: readonly Map<string, Tally>[]): void {
  const count = judged.length;
  const secondsEach = (process.cpuUsage().user / 1e6 - begunS) / count;
  const kinds = [...new Set(judged.flatMap((steps) => [...steps.keys()]))];
  const stepTallies = kinds.map((kind) => [kind, sumOf(judged.flatMap((steps) => steps.get(kind) ?? []))] as const);
  const cookTallies = judged.map((steps) => sumOf([...steps.values()]));

  /** Share of the judged moments at which the band held the truth, and its standard error: moments of one cook hang together. */
  function held(q: Quantity): { share: number; error: number } {
    const all = sumOf(cookTallies);
    const share = all.inside[q] / all.judged[q];
    const excess = cookTallies.map((t) => t.inside[q] - share * t.judged[q]);
    const squares = excess.reduce((sum, value) => sum + value * value, 0);
    return { share, error: Math.sqrt((squares * count) / Math.max(1, count - 1)) / all.judged[q] };
  }

  const percent = (value: number) => `${(100 * value).toFixed(0)} %`;
  const rows = stepTallies.flatMap(([kind, t]) =>
    quantities
      .filter((q) => t.judged[q] >= fewest)
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
  const overall = quantities.map((q) => {
    const { share, error } = held(q);
    return [q, percent(share), `${(100 * error).toFixed(1)} %`, share >= 0.76 && share <= 0.84 ? 'kept' : 'missed'];
  });
  publish('twin', 'Twin', [
    `${count} cooks of the Desk's first request, none of them used for choosing the twin's numbers; ${members} members, a reading each ${readEveryS} s with ${noiseC} C of noise. Every uncertain number of the hidden pans is drawn ${hiddenWidening} times wider than stated: stove, pan, thermometer, boiling curve and the kinetics of every reaction. Judged ${aheadS} s ahead each ${judgeEveryS} s, with the deeds that followed; no colour, pH or weight is told. One cook took ${secondsEach.toFixed(1)} s of a core. The bar: bands hold the truth 76-84 % of the time. Ratios of root mean square errors: against a twin of ${blindMembers} members that hears no readings, and against the last reading.`,
    table(['quantity', 'held, all steps', 'standard error', 'bar'], overall),
    table(['step', 'quantity', 'moments', 'held', 'error', 'against no readings', 'against persistence'], rows),
  ]);
}
