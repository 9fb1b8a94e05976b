/** A glass as it is kept: each sugar by the lot that it came from, or by what its packet printed; and the glass of beer that this makes. */
import { type AlkaliGiven, alkaliGPerKgRange } from '../lot/lot.ts';
import type { Range } from '../twin/range.ts';
import { boughtSugar } from './boughtSugar.ts';
import type { Dose, Glass, Rest, WhenAdded } from './glass.ts';
import { mineralsOfAlkali, noMinerals } from './minerals.ts';
import type { Sugar } from './sugar.ts';
import { type GlassLot, sugarOfLot } from './sugarOfLot.ts';
import { certain } from './uncertain.ts';

/** What a person may tell of any sugar. */
interface Told {
  /** None when nobody said; 0 g for a sugar that had no alkali. */
  readonly alkali: AlkaliGiven | null;
  /** Share of the solids that a forced ferment showed; by colour without it. */
  readonly fermentable: number | null;
  readonly pricePerKg: number | null;
}

export interface LotSugar extends Told {
  readonly kind: 'lot';
  readonly lotId: string;
}

export interface BoughtSugar extends Told {
  readonly kind: 'bought';
  readonly name: string;
  /** Mass fraction. */
  readonly solids: number;
  /** Of the sugar as it is, L/(g cm). */
  readonly specific430AsIs: number;
  /** Share of its sucrose; none when nobody said. */
  readonly inverted: number | null;
}

export type KeptSugar = LotSugar | BoughtSugar;

export interface KeptDose {
  readonly sugar: KeptSugar;
  readonly massKg: number;
  readonly added: WhenAdded;
}

export interface KeptGlass extends Omit<Glass, 'doses'> {
  /** The user's own name for the beer. */
  readonly name: string;
  readonly rest: Rest;
  readonly doses: readonly KeptDose[];
  /** For a kg of solids of the sugar that would be bought instead; none when nobody said. */
  readonly boughtPricePerKg: number | null;
  /** `YYYY-MM-DD`; none before it was bottled. */
  readonly bottledOn: string | null;
}

/** Inclusive limits of what `glassRanges` doesn't know. */
export const keptGlassRanges = {
  solids: [0.5, 1],
  specific430AsIs: [0, 0.9],
  inverted: [0, 1],
  fermentable: [0, 1],
  alkaliGPerKg: alkaliGPerKgRange,
  pricePerKg: [0, 10_000],
} as const satisfies Record<string, readonly [number, number]>;
export const mostDoses = 12;

/** What a share that somebody measured may be off by (assumed). */
const measuredReach = 0.02;
/** Inversion that nobody told of, for the 5 % that it moves minerals by. */
const unknownInverted = 0.5;

export type LotOf = (id: string) => GlassLot | undefined;

export type Poured =
  | { readonly kind: 'glass'; readonly glass: Glass }
  /** Which doses are of lots that are not known here. */
  | { readonly kind: 'unknown'; readonly doses: readonly number[] };

export function glassOf({ rest, doses, kettleLossL, pathCm }: KeptGlass, lotOf: LotOf): Poured {
  const poured = doses.map(({ sugar, massKg, added }): Dose | undefined => {
    const found = sugarOf(sugar, lotOf);
    return found && { sugar: found, massKg, added };
  });
  const unknown = poured.flatMap((dose, at) => (dose ? [] : [at]));
  if (unknown.length > 0) return { kind: 'unknown', doses: unknown };
  return { kind: 'glass', glass: { rest, doses: poured.filter((dose) => dose !== undefined), kettleLossL, pathCm } };
}

/** @returns nothing for a lot that is not known */
export function sugarOf(kept: KeptSugar, lotOf: LotOf): Sugar | undefined {
  const fermentable = kept.fermentable === null ? undefined : measured(kept.fermentable);
  const pricePerKg = kept.pricePerKg ?? undefined;
  if (kept.kind === 'bought') {
    const { name, solids, specific430AsIs, alkali, inverted } = kept;
    const minerals = alkali ? mineralsOf(alkali, solids, inverted ?? unknownInverted) : undefined;
    const told = { fermentable, pricePerKg, minerals, inverted: inverted ?? undefined };
    return boughtSugar({ name, solids, specific430AsIs, ...told });
  }
  const lot = lotOf(kept.lotId);
  return lot && sugarOfLot(lot, { alkali: kept.alkali ?? undefined, fermentable, pricePerKg });
}

function mineralsOf(alkali: AlkaliGiven, solids: number, inverted: number) {
  return alkali.gramsPerKgSucrose > 0 ? mineralsOfAlkali(alkali, certain(solids), inverted) : noMinerals;
}

function measured(mid: number): Range {
  return { low: Math.max(0, mid - measuredReach), mid, high: Math.min(1, mid + measuredReach) };
}
