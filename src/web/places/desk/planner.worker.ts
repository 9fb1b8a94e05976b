/** Plans and forecasts beside the page: the central course at once, then the draws a few at a time, unless something newer is asked for. */
import { expose, transfer } from 'comlink';
import type { Refusal } from '../../../core/advice/limits.ts';
import type { Course } from '../../../core/pan/course.ts';
import type { Kit } from '../../../core/pan/kit.ts';
import { centralValues } from '../../../core/pan/model.ts';
import { type PreparedKit, prepareKit } from '../../../core/pan/preparedKit.ts';
import { type Account, accountOf } from '../../../core/planning/account.ts';
import type { TasteAim } from '../../../core/planning/aim.ts';
import {
  type Draw,
  describe,
  drawEveryS,
  drawOf,
  forecastDraws,
  forecastSeed,
  summarise,
} from '../../../core/planning/forecast.ts';
import { drawnOdds, type Odds } from '../../../core/planning/odds.ts';
import { type Plan, planFor } from '../../../core/planning/plan.ts';
import type { PlanRequest, Route } from '../../../core/planning/request.ts';
import { solve } from '../../../core/planning/solve.ts';
import { type Bands, type Picture, pictureOf, ribbonEdges } from '../../parts/panLine/picture.ts';

const drawsAtOnce = 4;
/** The bands are shown when a quarter of the draws is there, and refined. */
const summariesAfter = [forecastDraws / 4, forecastDraws / 2, forecastDraws];

export type Outcome =
  | { readonly kind: 'plan'; readonly picture: Picture; readonly tookMs: number }
  | { readonly kind: 'refused'; readonly refusals: readonly Refusal[] }
  | { readonly kind: 'failed'; readonly message: string };

export interface Asked {
  readonly turn: number;
  readonly request: PlanRequest;
  readonly kit: Kit;
}

export interface Told {
  readonly turn: number;
  readonly bands: Bands;
  readonly account: Account;
  readonly tookMs: number;
}

let latest = 0;
let tell: (told: Told) => void = () => {};
let preparedFor: { readonly key: string; readonly prepared: PreparedKit } | undefined;

function prepare(kit: Kit): PreparedKit {
  // The name changes nothing that is computed.
  const key = JSON.stringify({ ...kit, name: '' });
  if (preparedFor?.key !== key) preparedFor = { key, prepared: prepareKit(kit) };
  return preparedFor.prepared;
}

function plan({ turn, request, kit }: Asked): Outcome {
  latest = turn;
  return outcomeOf(request, kit, (made) => void forecast(turn, made));
}

/** A plan to lay behind the one that is asked for: its central course alone. */
function lay(request: PlanRequest, kit: Kit): Outcome {
  return outcomeOf(request, kit, () => {});
}

interface Made {
  readonly plan: Plan;
  readonly course: Course;
  readonly prepared: PreparedKit;
  readonly picture: Picture;
}

function outcomeOf(request: PlanRequest, kit: Kit, goOn: (made: Made) => void): Outcome {
  const begun = performance.now();
  try {
    const prepared = prepare(kit);
    const planned = planFor(request, prepared);
    if (planned.kind === 'refused') return planned;
    const picture = pictureOf(planned.plan, planned.course, prepared);
    goOn({ plan: planned.plan, course: planned.course, prepared, picture });
    const columns = Object.values(picture.traces).map((column) => Float64Array.from(column));
    const traces = Object.fromEntries(Object.keys(picture.traces).map((name, i) => [name, columns[i]]));
    const sent = { ...picture, traces } as unknown as Picture;
    return transfer(
      { kind: 'plan', picture: sent, tookMs: performance.now() - begun },
      columns.map(({ buffer }) => buffer),
    );
  } catch (error) {
    return { kind: 'failed', message: error instanceof Error ? error.message : String(error) };
  }
}

async function forecast(turn: number, { plan, course, prepared, picture }: Made): Promise<void> {
  const begun = performance.now();
  const draws: Draw[] = [];
  const middle = describe(course, centralValues(prepared.kit), 1);
  await aMoment();
  if (turn !== latest) return;
  const account = accountOf(plan, course, prepared, { prices: prepared.kit.prices });
  for (const target of summariesAfter) {
    while (draws.length < target) {
      await aMoment();
      if (turn !== latest) return;
      for (let i = 0; i < drawsAtOnce; i++) draws.push(drawOf(plan, prepared, forecastSeed, draws.length));
    }
    const summary = summarise(plan, middle, draws);
    const bands = { forecast: summary, edges: ribbonEdges(picture, summary, drawEveryS) };
    const buffers = Object.values(summary.bands).flatMap(({ low, high }) => [low.buffer, high.buffer]);
    tell(transfer({ turn, bands, account, tookMs: performance.now() - begun }, buffers as ArrayBuffer[]));
  }
}

/** Lets a newer question in. */
function aMoment(): Promise<void> {
  return new Promise((resolve) => setTimeout(resolve, 0));
}

export interface Wish {
  readonly a430: number;
  /** A430 that would serve. */
  readonly band: readonly [number, number];
  readonly taste: TasteAim;
  readonly request: PlanRequest;
  /** To choose among. */
  readonly routes: readonly Route[];
  readonly kit: Kit;
}

export type Found =
  | {
      readonly kind: 'found';
      readonly request: PlanRequest;
      readonly a430: number;
      /** Where its cooks land, how many of them look like the aim, and how many lie in the band. */
      readonly odds: Odds;
      /** The band that was asked for. */
      readonly band: readonly [number, number];
      /** Why it comes no nearer; nothing when it is as asked. */
      readonly short: string | undefined;
    }
  | { readonly kind: 'refused'; readonly refusals: readonly Refusal[] }
  | { readonly kind: 'failed'; readonly message: string };

/** The plan that lands at a colour, and tastes as near to the wish as it then may. */
function find({ a430, band, taste, request, routes, kit }: Wish): Found {
  try {
    const prepared = prepare(kit);
    const solved = solve({ colour: { a430 }, taste }, request, prepared, routes);
    if (solved.kind === 'refused') return solved;
    const { made, plan: landing, short } = solved;
    const target = { a430, hueIndex: made.hueIndex, band };
    const odds = drawnOdds(landing, prepared, target, forecastDraws);
    return { kind: 'found', request: solved.request, a430: made.a430, odds, band, short };
  } catch (error) {
    return { kind: 'failed', message: error instanceof Error ? error.message : String(error) };
  }
}

const planner = {
  plan,
  lay,
  find,
  onForecast(listener: (told: Told) => void): void {
    tell = listener;
  },
};

export type Planner = typeof planner;

expose(planner);
