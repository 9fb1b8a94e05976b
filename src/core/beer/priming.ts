/**
 * Priming: how much of a sugar makes the carbon dioxide that a beer lacks, how sure that is, and what pressure it makes in the bottle.
 * Gas from sugar by Balling (some of the sugar becomes yeast) up to plain stoichiometry (none does).
 */
import { ebcFromA430 } from '../colour/scales.ts';
import { requireRange } from '../matter/range.ts';
import type { Range } from '../twin/range.ts';
import { alcoholByVolume, carbonDioxidePerAlcohol, extractPerAlcohol } from './balling.ts';
import { atmospherePa, carbonDioxideGPerL, carbonDioxidePa, gramsPerLitreOfVolume } from './carbonDioxide.ts';
import { inversionGain, requireSugar, type Sugar } from './sugar.ts';
import { type Pick, rangesOf } from './uncertain.ts';
import { carbonationRange, type VesselKind, vessels } from './vessels.ts';

export interface PrimingRequest {
  readonly volumeL: number;
  /** The warmest that the beer has been since it stopped fermenting. */
  readonly beerC: number;
  /** Carbonation wished, g/L in all. */
  readonly wishGPerL: number;
  readonly vessel: VesselKind;
  /** Volume of one bottle, L. */
  readonly bottleL: number;
  /** Of the air while it stood open; lower on a mountain. */
  readonly airPressurePa: number;
}

export const primingRanges = {
  volumeL: [0.1, 5000],
  beerC: [-1, 30],
  wishGPerL: carbonationRange.map((volumes) => volumes * gramsPerLitreOfVolume) as unknown as readonly [number, number],
  bottleL: [0.05, 60],
  airPressurePa: [60e3, 108e3],
} as const satisfies Record<string, readonly [number, number]>;

export const usualPriming = { vessel: 'ordinary', bottleL: 0.33, airPressurePa: atmospherePa } as const;

export interface PrimingNumbers<T> {
  /** In the beer before priming. */
  readonly residualGPerL: T;
  /** What to weigh so that the wish is met. */
  readonly massKg: T;
  readonly perBottleKg: T;
  /** What the middle of that mass makes, in all. */
  readonly reachedGPerL: T;
  readonly reachedVolumes: T;
  /** Above the air's, in the closed bottle at 20 C and in a warm place of 30 C, Pa. */
  readonly gaugePaAt20C: T;
  readonly gaugePaAt30C: T;
  readonly abvAdded: T;
  readonly ebcAdded: T;
}

export type Priming =
  | { readonly kind: 'primed'; readonly numbers: PrimingNumbers<Range> }
  | { readonly kind: 'refused'; readonly field: 'wish'; readonly message: string }
  /** The beer holds as much or more without any sugar. */
  | { readonly kind: 'already'; readonly residualGPerL: number };

/** Carbon dioxide from a gram of hexose: Balling in the middle, stoichiometry (two of six carbons) above; below it more yeast grows (assumed). */
export const gasFromHexose: Range = {
  low: 0.445,
  mid: carbonDioxidePerAlcohol / extractPerAlcohol,
  high: (2 * 44.0095) / 180.1559,
};
/** Error of the residual carbon dioxide: the table's rounding, the beer's own solubility, and gas that a still beer keeps (assumed). */
const residualError: Range = { low: 0.95, mid: 1, high: 1.05 };

/** @throws RangeError that names what is outside its limits */
export function primingFor(request: PrimingRequest, sugar: Sugar): Priming {
  requireRequest(request, sugar);
  const refusal = refused(request);
  if (refusal !== undefined) return { kind: 'refused', field: 'wish', message: refusal };
  const residualGPerL = carbonDioxideGPerL(request.beerC, request.airPressurePa);
  if (residualGPerL >= request.wishGPerL) return { kind: 'already', residualGPerL };
  const middleKg = massFor(
    request,
    residualGPerL,
    gasPerKg(sugar, (range) => range.mid),
  );
  const numbers = rangesOf((pick) => ({ ...numbersOf(request, sugar, pick, middleKg) }));
  return { kind: 'primed', numbers };
}

function numbersOf(request: PrimingRequest, sugar: Sugar, pick: Pick, middleKg: number): PrimingNumbers<number> {
  const { volumeL, beerC, airPressurePa, bottleL } = request;
  const residualGPerL = carbonDioxideGPerL(beerC, airPressurePa) * pick(residualError);
  const gas = gasPerKg(sugar, pick);
  const massKg = massFor(request, residualGPerL, gas);
  const madeGPerL = (1000 * middleKg * gas) / volumeL;
  const reachedGPerL = residualGPerL + madeGPerL;
  const gauge = (temperatureC: number) => Math.max(0, carbonDioxidePa(temperatureC, reachedGPerL) - airPressurePa);
  const colour = Math.max(0, pick(sugar.specific430)) * pick(sugar.solids);
  return {
    residualGPerL,
    massKg,
    perBottleKg: (massKg * bottleL) / volumeL,
    reachedGPerL,
    reachedVolumes: reachedGPerL / gramsPerLitreOfVolume,
    gaugePaAt20C: gauge(20),
    gaugePaAt30C: gauge(30),
    abvAdded: alcoholByVolume(madeGPerL / carbonDioxidePerAlcohol / 10, 1),
    ebcAdded: ebcFromA430((colour * 1000 * middleKg) / volumeL),
  };
}

/** Kilograms of gas from a kg of sugar as it is. */
function gasPerKg({ solids, sucrose, fermentable }: Sugar, pick: Pick): number {
  const hexose = Math.min(1, pick(fermentable)) + inversionGain * pick(sucrose);
  return Math.min(1, pick(solids)) * hexose * pick(gasFromHexose);
}

function massFor({ volumeL, wishGPerL }: PrimingRequest, residualGPerL: number, gas: number): number {
  return (Math.max(0, wishGPerL - residualGPerL) * volumeL) / 1000 / gas;
}

function refused({ wishGPerL, vessel }: PrimingRequest): string | undefined {
  const { most, why, words } = vessels[vessel];
  const volumes = wishGPerL / gramsPerLitreOfVolume;
  if (volumes <= most + 1e-9) return undefined;
  const elsewhere = vessel === 'ordinary' ? `, or up to ${vessels.heavy.most} in ${vessels.heavy.words}` : '';
  return `${volumes.toFixed(2)} volumes in ${words}: ${why}; allowed: up to ${most} volumes${elsewhere}`;
}

function requireRequest(request: PrimingRequest, sugar: Sugar): void {
  for (const [field, [low, high]] of Object.entries(primingRanges)) {
    requireRange(field, request[field as keyof typeof primingRanges], low, high);
  }
  requireSugar(sugar);
  requireRange(`fermentable of ${sugar.name}`, sugar.fermentable.mid, 0.2, 1);
}
