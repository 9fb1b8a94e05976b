/** The kitchen as the model needs it: stove, pan, thermometer, spoon, water and place, as a person would describe them. */
import { requireRange } from '../matter/range.ts';
import type { Learned } from './learned.ts';

export type StoveKind = 'gas' | 'coil' | 'ceramic' | 'induction';
export type PanMaterial = 'stainless' | 'enamel' | 'copper' | 'castIron' | 'aluminium' | 'unknownCoating';
export type ThermometerKind = 'digital' | 'dial';

export interface Stove {
  readonly kind: StoveKind;
  /** Rated power of the ring at its top setting, W. Gas: the burner's heat input. */
  readonly ratedPowerW: number;
  /** Highest number on the dial; heat is spoken of as a number from 0 to this. */
  readonly notches: number;
}

export interface PanVessel {
  readonly material: PanMaterial;
  /** Inside diameter, m. */
  readonly diameterM: number;
  /** Inside height, m. */
  readonly heightM: number;
  /** Mass of the empty pan, kg. */
  readonly massKg: number;
}

/** What has a price, for each kg, and for each kWh; `bought`: a bought sugar of the kind. */
export const pricedThings = ['sugar', 'maltExtract', 'alkali', 'acid', 'energy', 'bought'] as const;
export type PricedThing = (typeof pricedThings)[number];
/** In the user's own currency; what isn't given counts as nothing and is named. */
export type Prices = { readonly [Thing in PricedThing]?: number | undefined };

export interface Kit {
  readonly name: string;
  readonly stove: Stove;
  readonly pan: PanVessel;
  readonly thermometer: { readonly kind: ThermometerKind };
  /** Volume of the spoon used for cold water, m3. */
  readonly spoonM3: number;
  readonly water: {
    /** Total alkalinity, mg/L as CaCO3; distilled water: 0. */
    readonly alkalinityMgPerL: number;
    /** Calcium and magnesium, mg/L as CaCO3; left out when nobody told. No rate law of the pan holds it. */
    readonly hardnessMgPerL?: number | undefined;
  };
  readonly altitudeM: number;
  readonly roomC: number;
  readonly prices?: Prices | undefined;
  /** What cooks and checks have taught of it; nothing of a kit that is new. */
  readonly learned?: Learned | undefined;
}

/** What is tried first when nothing is known: an 18 cm stainless pan of 0.9 kg on a mid-size ceramic ring, near sea level. */
export const defaultKit: Kit = {
  name: 'Kitchen',
  stove: { kind: 'ceramic', ratedPowerW: 1800, notches: 9 },
  pan: { material: 'stainless', diameterM: 0.18, heightM: 0.1, massKg: 0.9 },
  thermometer: { kind: 'digital' },
  spoonM3: 4.92892e-6,
  water: { alkalinityMgPerL: 100 },
  altitudeM: 100,
  roomC: 21,
};

export const kitRanges = {
  ratedPowerW: [300, 6000],
  notches: [1, 20],
  diameterM: [0.1, 0.45],
  heightM: [0.05, 0.4],
  panMassKg: [0.2, 8],
  spoonM3: [1e-6, 2e-5],
  alkalinityMgPerL: [0, 600],
  hardnessMgPerL: [0, 1500],
  altitudeM: [-400, 4500],
  roomC: [0, 45],
  /** For each kg or kWh. */
  price: [0, 1e6],
} as const satisfies Record<string, readonly [number, number]>;

/** Throws a RangeError that names the first number outside its limits. */
export function requireKit({ stove, pan, spoonM3, water, altitudeM, roomC, prices = {} }: Kit): void {
  const numbers: Record<Exclude<keyof typeof kitRanges, 'price'>, number> = {
    ratedPowerW: stove.ratedPowerW,
    notches: stove.notches,
    diameterM: pan.diameterM,
    heightM: pan.heightM,
    panMassKg: pan.massKg,
    spoonM3,
    alkalinityMgPerL: water.alkalinityMgPerL,
    hardnessMgPerL: water.hardnessMgPerL ?? 0,
    altitudeM,
    roomC,
  };
  for (const [name, value] of Object.entries(numbers)) {
    const [low, high] = kitRanges[name as keyof typeof numbers];
    requireRange(name, value, low, high);
  }
  for (const [thing, price] of Object.entries(prices)) {
    if (price !== undefined) requireRange(`price of ${thing}`, price, ...kitRanges.price);
  }
}

/** Area of the syrup's surface, m2. */
export function surfaceAreaM2(pan: PanVessel): number {
  return (Math.PI * pan.diameterM ** 2) / 4;
}
