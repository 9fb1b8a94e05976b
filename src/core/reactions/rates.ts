/**
 * Speed of every reaction of `scheme.ts` in a batch, written out for speed: constants are read from curves over temperature,
 * and the hot pH comes from the charge balance of `acidity.ts`.
 */
import { type Charges, lnHydrogenActivity, sugarIonisationKJ, waterPk } from './acidity.ts';
import { arrhenius, arrheniusSlope } from './arrhenius.ts';
import { type Sampled, sampleCurves, slopeOf } from './curves.ts';
import type { ReactionParameter } from './parameters.ts';
import { type Formula, species } from './scheme.ts';

/** Places of the amounts (mol; acid and base in eq) in a batch's state. */
export const amount = {
  sucrose: 0,
  glucose: 1,
  fructose: 2,
  amine: 3,
  amadori: 4,
  prepigment: 5,
  boundAmine: 6,
  melanoidin: 7,
  fragments: 8,
  colourless: 9,
  caramel: 10,
  hmf: 11,
  acid: 12,
} as const;

export const amountCount = 13;

/** Molar masses in the order of `amount`, kg/mol; amine and acid are charges or groups whose mass is counted elsewhere. */
export const amountMassKg: readonly number[] = Object.keys(amount).map((name) =>
  name === 'acid' ? 0 : molarMassKg(species[name as Exclude<keyof typeof amount, 'acid'>]),
);

/** Molar mass of water from the same atoms as the amounts', so that reactions keep mass to rounding, kg/mol. */
export const waterMassKg = molarMassKg(species.water);

function molarMassKg({ c, h, o }: Formula): number {
  return (c * 12.011 + h * 1.008 + o * 15.999) / 1000;
}

/** Volume of syrup, L per kg (density about 1.33 kg/L, as the scheme was set up). */
const litresPerKg = 1 / 1.33;

const curveOrder = {
  inversion: 0,
  scission: 1,
  glucoseToFructose: 2,
  fructoseToGlucose: 3,
  fructoseDecay: 4,
  glucoseDecay: 5,
  neutralDecay: 6,
  fade: 7,
  pigmentFirst: 8,
  pigmentSecond: 9,
  amadori: 10,
  amadoriDecay: 11,
  prepigment: 12,
  hmf: 13,
  waterK: 14,
  sugarK: 15,
} as const;

type ReactionValues = Readonly<Record<ReactionParameter, number>>;

/** Roast sets in over this width, K (assumed). */
const roastWidthK = 2.5;

/** Roast begins at about 148 C: the share (0 to 1) of the roast multiplier in force (assumed). */
export function roastShare(temperatureC: number): number {
  return 1 / (1 + Math.exp(-(temperatureC - 148) / roastWidthK));
}

function arrheniusLaw(atReference: number, energyKJ: number, referenceC: number): Sampled {
  return {
    value: (t) => arrhenius(atReference, energyKJ, referenceC, t),
    slope: (t) => arrheniusSlope(atReference, energyKJ, referenceC, t),
  };
}

/** Ion product of water; the same for every draw, and costly. */
const waterIonisation = remembered((t) => 10 ** -waterPk(t));

/** A function and its slope that are worked out once for each x asked for. */
function remembered(value: (x: number) => number): Sampled {
  const known = new Map<number, readonly [number, number]>();
  const at = (x: number): readonly [number, number] => {
    const found = known.get(x) ?? [value(x), slopeOf(value, 0.05)(x)];
    known.set(x, found);
    return found;
  };
  return { value: (x) => at(x)[0], slope: (x) => at(x)[1] };
}

/** The temperature-dependent constants of the scheme, per second and mol/L. */
function curvesOf(p: ReactionValues): Readonly<Record<keyof typeof curveOrder, Sampled>> {
  const perSecond = (perMinute: number, energyKJ: number, referenceC: number): Sampled =>
    arrheniusLaw(perMinute / 60, energyKJ, referenceC);
  const lnRoast = Math.log(p.roastMultiplier);
  const roasted = (k: Sampled): Sampled => ({
    value: (t) => k.value(t) * Math.exp(lnRoast * roastShare(t)),
    slope: (t) => {
      const share = roastShare(t);
      const lnSlope = (lnRoast * share * (1 - share)) / roastWidthK;
      return (k.slope(t) + k.value(t) * lnSlope) * Math.exp(lnRoast * share);
    },
  });
  return {
    inversion: perSecond(p.inversionRate130, p.inversionEnergy, 130),
    scission: perSecond(p.scissionRate150, p.scissionEnergy, 150),
    glucoseToFructose: perSecond(p.glucoseToFructose, p.isomerEnergy, 120),
    fructoseToGlucose: perSecond(p.fructoseToGlucose, p.isomerEnergy, 120),
    fructoseDecay: perSecond(p.fructoseDecay, p.decayEnergy, 120),
    glucoseDecay: perSecond(p.glucoseDecay, p.decayEnergy, 120),
    neutralDecay: perSecond(p.neutralDecay140, p.neutralDecayEnergy, 140),
    fade: perSecond(p.fragmentFade, p.fragmentFadeEnergy, 120),
    pigmentFirst: roasted(perSecond(p.pigmentFirst, p.pigmentEnergy, 120)),
    pigmentSecond: roasted(perSecond(p.pigmentSecond, p.pigmentEnergy, 120)),
    amadori: perSecond(p.amadoriRate * 1000, p.amadoriEnergy, 120),
    amadoriDecay: perSecond(p.amadoriDecay, p.amadoriDecayEnergy, 120),
    prepigment: perSecond(p.prepigmentRate, p.prepigmentEnergy, 120),
    // Swift et al. 2014, ACS Catal. 4:259: ln k(381 K) = 1.44, 127 kJ/mol; furanose share 0.3 (assumed). Far outside its pH: an order of magnitude.
    hmf: perSecond(0.3 * Math.exp(1.44), 127, 107.85),
    waterK: waterIonisation,
    sugarK: arrheniusLaw(10 ** -p.sugarPk120, sugarIonisationKJ, 120),
  };
}

/** What the rates need to know of a batch beside the amounts. */
export interface Surroundings {
  temperatureC: number;
  /** Dissolved syrup, kg. */
  syrupKg: number;
  waterKg: number;
  /** Alkali released and water alkalinity, eq. */
  base: number;
  citricMol: number;
  maltKg: number;
}

/** Outcome that the heat and water balances take up, per second. */
export interface ReactionFlow {
  /** Water formed, mol/s. */
  water: number;
  /** Sucrose inverted, mol/s. */
  inverted: number;
}

export interface Rates {
  /** Writes the rates of change of the amounts (mol/s) to the first places of `change`; returns the hot pH. */
  derivatives(state: Float64Array, around: Readonly<Surroundings>, change: Float64Array, flow: ReactionFlow): number;
}

/** Water, g/mL, at which inversion runs at half its speed for want of water (assumed; keeps the last water from being overdrawn). */
export const lastWater = 1e-3;

const curveLowC = 4;
const curveHighC = 200;
/** The onset of roast, some 2.5 C wide, asks for samples this close, C. */
const curveStepC = 1;

/** Builds the rates for one set of parameter values. The last pH is remembered as the next one's first guess. */
export function createRates(p: ReactionValues): Rates {
  const sampled = curvesOf(p);
  const curves = sampleCurves(
    (Object.keys(curveOrder) as (keyof typeof curveOrder)[]).map((name) => sampled[name]),
    curveLowC,
    curveHighC,
    curveStepC,
  );
  const k = new Float64Array(curves.count);
  const charges: Charges = {
    base: 0,
    acid: 0,
    citric: 0,
    sugar: 0,
    waterKg: 0,
    buffer: 0,
    bufferPh: p.maltPh,
    waterK: 0,
    acidK: 10 ** -p.acidPk,
    sugarK: 0,
  };
  let lnH = -5.5 * Math.LN10;

  function settle(y: Float64Array, around: Readonly<Surroundings>): void {
    curves.read(around.temperatureC, k);
    charges.base = around.base;
    charges.acid = y[amount.acid];
    charges.citric = around.citricMol;
    charges.sugar = y[amount.glucose] + y[amount.fructose] + 0.5 * y[amount.sucrose];
    charges.waterKg = around.waterKg;
    charges.buffer = p.maltBuffer * around.maltKg;
    charges.waterK = k[curveOrder.waterK];
    charges.sugarK = k[curveOrder.sugarK];
    lnH = lnHydrogenActivity(charges, lnH);
  }

  return {
    derivatives(y, around, dy, flow) {
      settle(y, around);
      const litres = around.syrupKg * litresPerKg;
      const aH = Math.exp(lnH);
      const lnBase = -lnH - 6.8 * Math.LN10;
      const byHydroxide = Math.exp(p.hydroxideOrder * lnBase);
      const byPigmentPh = Math.exp(p.pigmentPhOrder * lnBase);
      const byAmadoriPh = Math.exp(p.amadoriPhOrder * Math.min(lnBase, 1.7 * Math.LN10));
      // By hydrogen ions, to the power `waterOrder` of the water's density.
      const waterDensity = around.waterKg / litres;
      const byAcid = Math.exp(lnH + p.waterOrder * Math.log(waterDensity));

      const wet = waterDensity / (waterDensity + lastWater);
      const inversion = wet * (k[curveOrder.inversion] * byAcid + k[curveOrder.scission]) * y[amount.sucrose];
      const isomerisation =
        byHydroxide *
        (k[curveOrder.glucoseToFructose] * y[amount.glucose] - k[curveOrder.fructoseToGlucose] * y[amount.fructose]);
      const fructoseDecay =
        (byHydroxide * k[curveOrder.fructoseDecay] + k[curveOrder.neutralDecay]) * y[amount.fructose];
      const glucoseDecay = byHydroxide * k[curveOrder.glucoseDecay] * y[amount.glucose];
      const fading = k[curveOrder.fade] * y[amount.fragments];
      const pigment =
        byPigmentPh *
        y[amount.fragments] *
        (k[curveOrder.pigmentFirst] + (2 * k[curveOrder.pigmentSecond] * y[amount.fragments]) / litres);
      const condensation = (byAmadoriPh * k[curveOrder.amadori] * y[amount.amine]) / litres;
      const fromGlucose = condensation * y[amount.glucose];
      const fromFructose = condensation * y[amount.fructose];
      const amadoriDecay = k[curveOrder.amadoriDecay] * y[amount.amadori];
      const toPrepigment = p.prepigmentShare * amadoriDecay;
      const backToAmine = amadoriDecay - toPrepigment;
      const melanoidin = k[curveOrder.prepigment] * y[amount.prepigment];
      const n = p.sugarPerMelanoidin;
      const hmf = ((k[curveOrder.hmf] * aH) / 55.5) * y[amount.fructose];

      dy[amount.sucrose] = -inversion;
      dy[amount.glucose] = inversion - isomerisation - glucoseDecay - fromGlucose;
      dy[amount.fructose] = inversion + isomerisation - fructoseDecay - fromFructose - hmf;
      dy[amount.amine] = backToAmine - fromGlucose - fromFructose;
      dy[amount.amadori] = fromGlucose + fromFructose - amadoriDecay;
      dy[amount.prepigment] = toPrepigment - melanoidin;
      dy[amount.boundAmine] = melanoidin;
      dy[amount.melanoidin] = n * melanoidin;
      dy[amount.fragments] = fructoseDecay + glucoseDecay + backToAmine - fading - pigment - (n - 1) * melanoidin;
      dy[amount.colourless] = fading;
      dy[amount.caramel] = pigment;
      dy[amount.hmf] = hmf;
      dy[amount.acid] =
        p.acidPerHexose * (fructoseDecay + glucoseDecay) + p.acidPerFragment * fading + 0.5 * backToAmine;
      flow.inverted = inversion;
      flow.water =
        -inversion + 1.5 * pigment + fromGlucose + fromFructose - backToAmine + (n - 1) * melanoidin + 3 * hmf;
      return -lnH / Math.LN10;
    },
  };
}

/** Absorbance of the batch at 420 nm per cm of undiluted syrup, from its pigments (Beer-Lambert). */
export function absorbance420PerCm(state: Float64Array, syrupKg: number, absorptivityLPerMmolCm: number): number {
  const pigmentMmol = (state[amount.melanoidin] + state[amount.caramel]) * 1000;
  return (absorptivityLPerMmolCm * pigmentMmol) / (syrupKg * litresPerKg);
}
