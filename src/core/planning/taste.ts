/**
 * What a sugar may taste of, as indices from 0 to 10 on scales of logarithms. They follow amounts of the model, each with the temperatures at
 * which its kind of aroma is said to form; no published data of taste over time exist for this process, so every scale here is assumed.
 */
import type { ModelValues } from '../pan/physics.ts';
import { place } from '../pan/state.ts';
import { arrhenius } from '../reactions/arrhenius.ts';

export const tasteNames = ['fruit', 'toffee', 'roast', 'burnt', 'alkali'] as const;
export type TasteName = (typeof tasteNames)[number];
export type Taste = Readonly<Record<TasteName, number>>;

/** What the syrup has been through. */
export interface Exposure {
  /** Amadori compound broken down between 110 and 145 C, mol: odorants of malt and fruit come this way. */
  readonly fruitMol: number;
  /** Sugar fragments made below 150 C, mol: cyclotene, furaneol and their kin are made of such (Kroh 1994, seen quoted). */
  readonly toffeeMol: number;
  /** Degrees above 145 C times minutes, counted at their speed at 155 C. */
  readonly roastKMin: number;
  /** Degrees above 160 C times minutes. */
  readonly burntKMin: number;
}

export const unexposed: Exposure = { fruitMol: 0, toffeeMol: 0, roastKMin: 0, burntKMin: 0 };

/** Roast notes quicken like browning: 130 kJ/mol (assumed). */
const roastKJ = 130;
const roastReferenceC = 155;
/** The marks between kinds of aroma are this wide, K (assumed). */
const widthK = 2.5;

const below = (temperatureC: number, markC: number): number => 1 / (1 + Math.exp((temperatureC - markC) / widthK));

export interface ExposureMeter {
  /** Takes in a point of the cook; the pan's temperature holds since the last one. */
  take(timeS: number, y: Float64Array, temperatureC: number): void;
  readonly exposure: Exposure;
}

/** Begins at a point with what the syrup has been through before. */
export function createExposureMeter(
  values: Pick<ModelValues, 'prepigmentShare' | 'sugarPerMelanoidin'>,
  before: Exposure,
): ExposureMeter {
  const { prepigmentShare, sugarPerMelanoidin } = values;
  // By the declared reactions: all Amadori compound gone, and all fragments ever made, follow from what is there.
  const amadoriGone = (y: Float64Array): number => (y[place.prepigment] + y[place.boundAmine]) / prepigmentShare;
  const fragmentsMade = (y: Float64Array): number =>
    y[place.fragments] + y[place.colourless] + y[place.caramel] + (sugarPerMelanoidin - 1) * y[place.boundAmine];
  let { fruitMol, toffeeMol, roastKMin, burntKMin } = before;
  let lastS = Number.NaN;
  let lastAmadori = 0;
  let lastFragments = 0;
  let lastC = 0;
  return {
    take(timeS, y, temperatureC) {
      const amadori = amadoriGone(y);
      const fragments = fragmentsMade(y);
      if (timeS > lastS) {
        const middleC = (temperatureC + lastC) / 2;
        const minutes = (timeS - lastS) / 60;
        fruitMol += (amadori - lastAmadori) * below(middleC, 145) * (1 - below(middleC, 110));
        toffeeMol += (fragments - lastFragments) * below(middleC, 150);
        if (middleC > 145) roastKMin += minutes * (middleC - 145) * arrhenius(1, roastKJ, roastReferenceC, middleC);
        if (middleC > 160) burntKMin += minutes * (middleC - 160);
      }
      lastS = timeS;
      lastAmadori = amadori;
      lastFragments = fragments;
      lastC = temperatureC;
    },
    get exposure() {
      return { fruitMol, toffeeMol, roastKMin, burntKMin };
    },
  };
}

/** 0 at nothing, 10 at `full`, and beyond it 10; most sensitive about `small`. */
function onScale(value: number, small: number, full: number): number {
  return Math.min(10, (10 * Math.log1p(Math.max(0, value) / small)) / Math.log1p(full / small));
}

/** Scales: from what is hardly there to the most that a kitchen does (assumed). */
const fruitMmolPerKg = { small: 0.3, full: 15 };
const toffeeMolPerKg = { small: 0.02, full: 1 };
const roastScale = { small: 5, full: 400 };
const burntScale = { small: 2, full: 50 };
/** Bitter from here on as A420 of a 10 % solution, and as bitter as the scale goes this much higher (assumed). */
const bitterFromA420 = 8;
const bitterSpan = 8;
/** Where salt is said to be tasted in water, mg/L of sodium or calcium (WHO guidelines for drinking-water, seen quoted; calcium 100-300). */
const tastedMgPerL = 200;
/** Sugar in a beer, g/L, that the alkali's taste is judged at (assumed; a strong dark beer with a fifth of its extract from sugar). */
export const judgedAtGPerL = 40;

export interface Tasted {
  readonly exposure: Exposure;
  readonly sucroseKg: number;
  /** Absorbance of a 10 % solution at 420 nm. */
  readonly a420: number;
  /** Sodium and calcium from the alkali, g for each kg of finished sugar. */
  readonly mineralGPerKg: number;
}

export function tasteOf({ exposure, sucroseKg, a420, mineralGPerKg }: Tasted): Taste {
  const bitter = Math.min(10, (10 * Math.max(0, a420 - bitterFromA420)) / bitterSpan);
  return {
    fruit: onScale((1000 * exposure.fruitMol) / sucroseKg, fruitMmolPerKg.small, fruitMmolPerKg.full),
    toffee: onScale(exposure.toffeeMol / sucroseKg, toffeeMolPerKg.small, toffeeMolPerKg.full),
    roast: onScale(exposure.roastKMin, roastScale.small, roastScale.full),
    burnt: Math.max(bitter, onScale(exposure.burntKMin, burntScale.small, burntScale.full)),
    alkali: Math.min(10, (10 * mineralGPerKg * judgedAtGPerL) / tastedMgPerL),
  };
}
