/** The solver: how near its plans land with the median kit, over aims spread over what kits can make; and whether the odds that it states come true over hidden kits. */
import { ebcFromA430 } from '../src/core/colour/scales.ts';
import { defaultKit, type Kit } from '../src/core/pan/kit.ts';
import { drawnValues } from '../src/core/pan/model.ts';
import { type PreparedKit, prepareKit } from '../src/core/pan/preparedKit.ts';
import {
  type Landing,
  landedIn,
  landingOf,
  looksAlike,
  oddsDraws,
  oddsOf,
  withinBand,
} from '../src/core/planning/odds.ts';
import { defaultRequest, type PlanRequest, type Route } from '../src/core/planning/request.ts';
import { type Landed, landsNear, solve } from '../src/core/planning/solve.ts';
import { normalNumbers } from '../src/core/reactions/normal.ts';
import { rangeOf } from '../src/core/twin/range.ts';
import { hiddenWidening } from './measure/hiddenCook.ts';
import { publish, table } from './measure/report.ts';

const kits: readonly Kit[] = [
  defaultKit,
  {
    ...defaultKit,
    name: 'gas, high up',
    stove: { kind: 'gas', ratedPowerW: 2500, notches: 6 },
    pan: { material: 'stainless', diameterM: 0.22, heightM: 0.12, massKg: 1.4 },
    altitudeM: 1500,
    water: { alkalinityMgPerL: 250 },
  },
  {
    ...defaultKit,
    name: 'induction, small pan',
    stove: { kind: 'induction', ratedPowerW: 1400, notches: 14 },
    pan: { material: 'enamel', diameterM: 0.16, heightM: 0.11, massKg: 1.1 },
    water: { alkalinityMgPerL: 0 },
  },
];

interface Asked {
  readonly prepared: PreparedKit;
  readonly ebc: number;
  readonly request: PlanRequest;
  readonly routes: readonly Route[];
}

/** Aims evenly spread over the logarithm of what each route makes, over forms and kits. */
const spans: Readonly<Record<Route, readonly [number, number, number]>> = {
  pale: [1, 6, 8],
  bright: [12, 200, 16],
  deep: [15, 230, 16],
};

function aims(): readonly Asked[] {
  const prepared = kits.map(prepareKit);
  return Object.entries(spans).flatMap(([route, [low, high, count]]) =>
    Array.from({ length: count }, (_, i) => ({
      prepared: prepared[i % prepared.length],
      ebc: low * (high / low) ** (i / (count - 1)),
      request: { ...defaultRequest, form: i % 2 === 0 ? ('hard' as const) : ('syrup' as const) },
      routes: [route as Route],
    })),
  );
}

interface Solution extends Asked {
  readonly landed: Landed;
  readonly ms: number;
}

function solutions(): readonly Solution[] {
  return aims().map((asked) => {
    const begun = performance.now();
    const solved = solve({ colour: { a430: asked.ebc / 25 } }, asked.request, asked.prepared, asked.routes);
    if (solved.kind === 'refused') throw new Error(`${asked.ebc} EBC is refused: ${solved.refusals[0]?.message}`);
    return { ...asked, landed: solved, ms: performance.now() - begun };
  });
}

/** The plan was simulated with the kit's central values to be made: its course is the check. */
function landing(all: readonly Solution[]): string {
  const rows = Object.keys(spans).map((route) => {
    const own = all.filter(({ routes }) => routes[0] === route);
    const near = own.filter(({ landed: { made, aimA430 } }) => landsNear(made.a430, aimA430)).length;
    const worst = own.reduce((most, { landed }) => Math.max(most, Math.abs(landed.offBy - 1)), 0);
    const ebc = own.reduce(
      (most, { landed: { made, aimA430 } }) => Math.max(most, Math.abs(ebcFromA430(made.a430 - aimA430))),
      0,
    );
    const { mid, high } = rangeOf(own.map(({ ms }) => ms));
    return [
      route,
      `${spans[route as Route][0]}-${spans[route as Route][1]}`,
      `${near} of ${own.length}`,
      `${(100 * worst).toFixed(2)} %`,
      ebc.toFixed(2),
      `${mid.toFixed(0)}, ${high.toFixed(0)}`,
    ];
  });
  return `## Landing with the median kit

Bar: every plan within 2 EBC or 3 % of its aim. Three kits, hard and syrup in turn.

${table(['route', 'aims, EBC', 'near', 'worst, share', 'worst, EBC', 'time: middle, 90 %, ms'], rows)}`;
}

const hiddenKits = Number(process.env['KITS'] ?? 200);
/** Bands asked for, as factors about the aim. */
const factors = [1.1, 1.25, 1.5, 2];

interface Statement {
  readonly stated: number;
  readonly came: number;
}

/** For each aim, what was stated of it and how often it came true, by event: the look, then each band. */
function statements(all: readonly Solution[], widening: number): readonly (readonly Statement[])[] {
  return all.map(({ landed: { plan, made, aimA430 }, prepared }, at) => {
    const target = { a430: aimA430, hueIndex: made.hueIndex };
    const bands = factors.map((factor) => [aimA430 / factor, aimA430 * factor] as const);
    const drawn = Array.from({ length: oddsDraws }, (_, i) => landingOf(plan, prepared, 1, i));
    const hidden = Array.from({ length: hiddenKits }, (_, i): Landing => {
      const normal = normalNumbers(7_000_001 + 1000 * at + i);
      return landedIn(
        plan,
        prepared,
        drawnValues(prepared.kit, () => widening * normal()),
        normal,
      );
    });
    const share = (came: (one: Landing) => boolean): number => hidden.filter(came).length / hidden.length;
    return [
      { stated: oddsOf(drawn, target).justVisible, came: share((one) => looksAlike(one, target)) },
      ...bands.map((band) => ({
        stated: oddsOf(drawn, { ...target, band }).band ?? Number.NaN,
        came: share((one) => withinBand(one, band)),
      })),
    ];
  });
}

const points = (share: number): string => (100 * share).toFixed(1);
const mean = (list: readonly number[]): number => list.reduce((sum, each) => sum + each, 0) / list.length;

function eventRows(found: readonly (readonly Statement[])[]): string[][] {
  return ['just visible', ...factors.map((factor) => `within a factor ${factor}`)].map((name, event) => {
    const own = found.map((each) => each[event]);
    const [stated, came] = [mean(own.map((each) => each.stated)), mean(own.map((each) => each.came))];
    return [name, String(own.length * hiddenKits), points(stated), points(came), points(came - stated)];
  });
}

function binRows(found: readonly (readonly Statement[])[]): string[][] {
  const every = found.flat();
  const edges = [0, 0.05, 0.1, 0.2, 0.3, 0.4, 0.5, 0.6, 0.8, 1.0001];
  return edges.slice(1).flatMap((high, i) => {
    const own = every.filter(({ stated }) => stated >= edges[i] && stated < high);
    if (own.length === 0) return [];
    const [stated, came] = [mean(own.map((each) => each.stated)), mean(own.map((each) => each.came))];
    const name = `${points(edges[i])} to ${points(Math.min(1, high))}`;
    return [[name, String(own.length * hiddenKits), points(stated), points(came), points(came - stated)]];
  });
}

function reliability(all: readonly Solution[]): string {
  const some = all.filter((_, i) => i % 3 === 1);
  const asStated = statements(some, 1);
  const wider = statements(some, hiddenWidening);
  const heads = ['event', 'cooks', 'stated, %', 'came true, %', 'difference, points'];
  const bins = ['stated odds, %', ...heads.slice(1)];
  return `## Do the odds come true?

${some.length} of the aims; odds from ${oddsDraws} draws each; each plan then cooked in ${hiddenKits} hidden kits drawn apart, with spoonfuls that scatter. Bar: within 5 points.

${table(heads, eventRows(asStated))}

All events by the odds stated:

${table(bins, binRows(asStated))}

Hidden kits that lie ${hiddenWidening} times as far out as the spreads say (a test of overconfidence, no bar):

${table(heads, eventRows(wider))}

${table(bins, binRows(wider))}`;
}

const all = solutions();
publish('solve', 'The solver', [landing(all), reliability(all)]);
