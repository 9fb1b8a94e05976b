/** What a plan comes to beside weights and steps: minerals, energy, time, loss, water, tray or let-down, bath, neutraliser, cost. */
import type { Course } from '../pan/course.ts';
import type { Kit, Prices } from '../pan/kit.ts';
import { centralValues } from '../pan/model.ts';
import { createPan } from '../pan/physics.ts';
import type { PreparedKit } from '../pan/preparedKit.ts';
import { contentsKg, dissolvedKg, place, solidsIn } from '../pan/state.ts';
import { letDownWaterKg, trayAreaM2, usualThicknessM } from './account/casting.ts';
import { coldBathKg } from './account/coldBath.ts';
import { type Cost, costOf } from './account/cost.ts';
import { energyKWh } from './account/energy.ts';
import { type Neutraliser, neutraliserOf } from './account/neutraliser.ts';
import { type WaterCheck, waterCheck } from './account/waterCheck.ts';
import { createBranches } from './field/branches.ts';
import { madeOf } from './field/made.ts';
import { type Minerals, mineralsOf } from './minerals.ts';
import type { Plan } from './plan.ts';

/** What is known beside request and kit; all may be left out. */
export interface AccountOptions {
  readonly prices?: Prices | undefined;
  readonly thicknessM?: number | undefined;
}

export interface Account extends Minerals {
  readonly minutes: number;
  readonly energyKWh: number;
  /** Sugar that stays on pan and spoon, and water boiled off, kg. */
  readonly lostKg: number;
  readonly steamKg: number;
  readonly water: WaterCheck;
  /** The same recipe cooked with distilled water: its colour as a factor of this one's, and its inverted share less this one's. */
  readonly distilled: { readonly colourFactor: number; readonly invertedMore: number };
  /** Cold water for a bath that stops the cook of hard sugar, kg; a syrup is stopped by its own water. */
  readonly bathKg: number | undefined;
  /** Tray for hard sugar, m2, at a thickness, m. */
  readonly tray: { readonly areaM2: number; readonly thicknessM: number } | undefined;
  /** Water that a syrup takes by mass balance, kg, from what it holds when letting down begins. */
  readonly letDownKg: number | undefined;
  /** For the acid of a pale syrup, when it has cooled. */
  readonly neutraliser: Neutraliser | undefined;
  readonly cost: Cost | undefined;
}

export function accountOf(plan: Plan, course: Course, prepared: PreparedKit, options: AccountOptions = {}): Account {
  const { request, amounts, yieldKg } = plan;
  const { kit } = prepared;
  const { last } = course;
  const water = waterCheck(kit.water, {
    waterKg: amounts.charge.waterKg,
    alkaliEq: amounts.alkali?.equivalents ?? 0,
    yieldKg,
  });
  const energy = energyKWh(course, kit.stove);
  const neutraliser = neutraliserOf(plan, kit);
  const { thicknessM = usualThicknessM } = options;
  const hard = request.form === 'hard';
  const cooled = {
    contentsKg: contentsKg(last),
    solids: solidsIn(last),
    panJPerK: prepared.panJPerK,
    temperatureC: course.hottestC,
  };
  return {
    ...(neutraliser
      ? mineralsOf({ substance: request.alkali, equivalents: neutraliser.equivalents }, yieldKg)
      : mineralsOf(amounts.alkali, contentsKg(last))),
    minutes: (course.steps.at(-1)?.endS ?? 0) / 60,
    energyKWh: energy,
    lostKg: contentsKg(last) - yieldKg,
    steamKg: last[place.steamKg],
    water,
    distilled: againstDistilled(plan, prepared),
    bathKg: hard ? coldBathKg(cooled, kit.roomC) : undefined,
    tray: hard ? { areaM2: trayAreaM2(yieldKg, solidsIn(last), thicknessM), thicknessM } : undefined,
    letDownKg: hard ? undefined : letDownKg(plan, course),
    neutraliser,
    cost: costOf(amounts, energy, yieldKg, options.prices ?? {}),
  };
}

/** Two coarse cooks, so that what differs is the water alone. */
function againstDistilled({ amounts, steps }: Plan, prepared: PreparedKit): Account['distilled'] {
  const values = centralValues(prepared.kit);
  const cooked = (kit: Kit) => {
    const [end] = createBranches(createPan({ ...prepared, kit }, values), kit).cook([
      { charge: amounts.charge, steps },
    ]);
    return madeOf(end, amounts, values);
  };
  const own = cooked(prepared.kit);
  const distilled = cooked({ ...prepared.kit, water: { ...prepared.kit.water, alkalinityMgPerL: 0 } });
  return { colourFactor: distilled.a430 / own.a430, invertedMore: distilled.inverted - own.inverted };
}

/** From the state at which letting down begins. */
function letDownKg({ request }: Plan, course: Course): number {
  const row = Math.min(course.timeS.length - 1, Math.floor(course.steps.at(-1)?.startS ?? 0));
  const y = Float64Array.from(course.states, (column) => column[row]);
  return letDownWaterKg(dissolvedKg(y), y[place.waterKg], request.syrupSolids);
}
