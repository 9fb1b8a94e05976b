/** From a colour and a taste wished for to the plan that should land there, with its odds. */

import { prepareKit } from '../../core/pan/preparedKit.ts';
import { type Aim, bandAbout, usualWithin } from '../../core/planning/aim.ts';
import { drawnOdds, type Odds } from '../../core/planning/odds.ts';
import type { Route } from '../../core/planning/request.ts';
import { type Landed, solve } from '../../core/planning/solve.ts';
import { flagOf, readAll, type Texts } from '../input.ts';
import { Stop } from '../stop.ts';
import { aimInputs } from './aimOptions.ts';
import { type Planning, refusedStop, requireDone, whatIsAsked } from './makePlan.ts';

export interface Aimed extends Planning {
  readonly landed: Landed;
  readonly odds: Odds;
  readonly band: readonly [number, number];
}

/** What the solver decides: giving it as well would say two things. */
const decided = ['dose'] as const;

/** @returns nothing when no colour is wished for */
export async function aimedPlan(texts: Texts): Promise<Aimed | undefined> {
  const { colour, within = usualWithin, fruitTaste, roastTaste } = readAll(aimInputs, texts);
  if (colour === undefined) {
    requireColour(texts);
    return undefined;
  }
  for (const option of decided) {
    if (texts[option] === undefined) continue;
    const message = `${flagOf(option)} follows from --colour: leave one of them out`;
    throw new Stop({ kind: 'misused', field: flagOf(option), message });
  }
  const { request, kit } = await whatIsAsked(texts);
  const prepared = prepareKit(kit);
  const taste =
    fruitTaste === undefined && roastTaste === undefined ? undefined : { fruit: fruitTaste, roast: roastTaste };
  const aim: Aim = { colour, taste };
  const routes: readonly Route[] | undefined = texts['route'] === undefined ? undefined : [request.route];
  const solved = solve(aim, request, prepared, routes);
  if (solved.kind === 'refused') throw refusedStop(solved.refusals);
  const { plan, course, made, aimA430 } = solved;
  requireDone(course);
  const band = bandAbout(aimA430, within);
  const odds = drawnOdds(plan, prepared, { a430: aimA430, hueIndex: made.hueIndex, band });
  return { plan, course, kit, prepared, landed: solved, odds, band };
}

/** Options that say nothing without a colour. */
function requireColour(texts: Texts): void {
  const idle = Object.keys(aimInputs).find((option) => texts[option] !== undefined);
  if (idle === undefined) return;
  throw new Stop({ kind: 'misused', field: flagOf(idle), message: `${flagOf(idle)} is of use with --colour alone` });
}
