/** The steps of a plan: bands, ends and dial settings, from what was asked and what the kit is expected to give. */
import { limits } from '../advice/limits.ts';
import type { ModelValues } from '../pan/physics.ts';
import type { PreparedKit } from '../pan/preparedKit.ts';
import type { Step } from '../pan/steps.ts';
import type { Amounts } from './amounts.ts';
import { type FurtherHold, type PlanRequest, requestRanges } from './request.ts';

/** Half the width of a band, K; sugar counts as dissolved at 106 C; a shattering cast needs 151 C (common practice, no source). */
const halfBandK = 3;
const dissolvedC = 106;
const castC = 151;
/** Seconds between two parts of alkali, and two portions of water, until the pan is quiet again (common practice, no source). */
export const alkaliWaitS = 30;
const portionWaitS = 12;
/** Heat beyond the losses that keeps a gentle boil, and that warms on towards the next band, W for each kg of sugar (assumed). */
const holdWPerKg = 300;
const approachWPerKg = 550;
const climbWPerKg = 1200;

interface Planning {
  readonly request: PlanRequest;
  readonly amounts: Amounts;
  readonly prepared: PreparedKit;
  readonly values: ModelValues;
}

/** Dial setting that gives `extraW` more than the pan loses at a temperature; a whole number, at least 1. */
function notchFor({ prepared, values }: Planning, temperatureC: number, extraW: number): number {
  const { kit, sideLoss, surfaceLoss } = prepared;
  const d = temperatureC - kit.roomC;
  const lost = d * (sideLoss.linear + surfaceLoss.linear + d * (sideLoss.quadratic + surfaceLoss.quadratic));
  const full = kit.stove.ratedPowerW * values.stoveEfficiency;
  const notch = Math.round((kit.stove.notches * (values.lossFactor * lost + extraW)) / full);
  return Math.min(kit.stove.notches, Math.max(1, notch));
}

/** What a further hold does to the syrup: without alkali it inverts on, with it it browns, and from the roast's temperatures on it roasts. */
function furtherKind({ route }: Pick<PlanRequest, 'route'>, { celsius }: FurtherHold): 'invert' | 'brown' | 'roast' {
  if (route === 'pale') return 'invert';
  return celsius < requestRanges.roastC[0] ? 'brown' : 'roast';
}

/** Is it a step that is held, by its own or by another's wish? */
export function isHold({ end, letDown }: Pick<Step, 'end' | 'letDown'>): boolean {
  return 'heldMinutes' in end && !letDown;
}

export function stepsFor(planning: Planning): readonly Step[] {
  const { request, amounts } = planning;
  const sugarKg = amounts.charge.sucroseKg;
  const notch = (temperatureC: number, wattsPerKg: number) => notchFor(planning, temperatureC, wattsPerKg * sugarKg);
  const plain = { alkali: [], waitS: 0 } as const;
  const band = (middleC: number) => [middleC - halfBandK, middleC + halfBandK] as const;

  const hold = (kind: Step['kind'], middleC: number, heldMinutes: number): Step => ({
    ...plain,
    kind,
    bandC: band(middleC),
    end: { heldMinutes },
    approachNotch: notch(middleC, approachWPerKg),
    holdNotch: notch(middleC, holdWPerKg),
  });

  const steps: Step[] = [
    {
      ...plain,
      kind: 'dissolve',
      bandC: [planning.prepared.kit.roomC, dissolvedC],
      end: { reachedC: dissolvedC },
      approachNotch: notch(dissolvedC, climbWPerKg),
      holdNotch: 1,
    },
    {
      ...plain,
      kind: 'climb',
      bandC: [dissolvedC, request.invertC - halfBandK],
      end: { reachedC: request.invertC - halfBandK },
      approachNotch: notch(request.invertC, climbWPerKg),
      holdNotch: 1,
    },
    hold('invert', request.invertC, request.invertMinutes),
  ];
  if (request.route !== 'pale') {
    steps.push({
      ...hold('brown', request.brownC, request.brownMinutes),
      alkali: amounts.alkali?.parts ?? [],
      waitS: alkaliWaitS,
    });
  }
  if (request.route === 'deep') steps.push(hold('roast', request.roastC, request.roastMinutes));
  for (const further of request.moreHolds ?? []) {
    steps.push(hold(furtherKind(request, further), further.celsius, further.minutes));
  }

  const hottestC = Math.max(...steps.map((step) => step.bandC[0]));
  if (request.form === 'hard' && hottestC < castC) {
    steps.push({
      ...plain,
      kind: 'cast',
      bandC: [castC - halfBandK, castC + halfBandK],
      end: { reachedC: castC },
      approachNotch: notch(castC, approachWPerKg),
      holdNotch: 1,
    });
  }
  if (request.form === 'syrup') {
    const hotPortionKg = limits.hotPortion.value * sugarKg;
    steps.push({
      ...plain,
      kind: 'letDown',
      bandC: [100, 120],
      end: { heldMinutes: 0 },
      approachNotch: 0,
      holdNotch: 0,
      waitS: portionWaitS,
      letDown: { solids: request.syrupSolids, hotPortionKg, coolPortionKg: 4 * hotPortionKg },
    });
  }
  return steps;
}
