/** The rate constants of the reaction scheme by name: which parameters make each, as `core/reactions/rates.ts` puts them together. */
import { type ReactionParameter, reactionParameters } from '../../core/reactions/parameters.ts';

interface RateFacts {
  readonly parameter: ReactionParameter;
  readonly energy: ReactionParameter;
  readonly referenceC: number;
  /** Decades per unit of pH, from pH 6.8. */
  readonly phOrder?: ReactionParameter;
  /** Times the roast multiplier, from about 148 C on. */
  readonly roasted?: true;
}

export const rateTable = {
  inversion: { parameter: 'inversionRate130', energy: 'inversionEnergy', referenceC: 130 },
  scission: { parameter: 'scissionRate150', energy: 'scissionEnergy', referenceC: 150 },
  glucoseToFructose: {
    parameter: 'glucoseToFructose',
    energy: 'isomerEnergy',
    referenceC: 120,
    phOrder: 'hydroxideOrder',
  },
  fructoseToGlucose: {
    parameter: 'fructoseToGlucose',
    energy: 'isomerEnergy',
    referenceC: 120,
    phOrder: 'hydroxideOrder',
  },
  fructoseDecay: { parameter: 'fructoseDecay', energy: 'decayEnergy', referenceC: 120, phOrder: 'hydroxideOrder' },
  glucoseDecay: { parameter: 'glucoseDecay', energy: 'decayEnergy', referenceC: 120, phOrder: 'hydroxideOrder' },
  neutralDecay: { parameter: 'neutralDecay140', energy: 'neutralDecayEnergy', referenceC: 140 },
  fragmentFade: { parameter: 'fragmentFade', energy: 'fragmentFadeEnergy', referenceC: 120 },
  pigmentFirst: {
    parameter: 'pigmentFirst',
    energy: 'pigmentEnergy',
    referenceC: 120,
    phOrder: 'pigmentPhOrder',
    roasted: true,
  },
  pigmentSecond: {
    parameter: 'pigmentSecond',
    energy: 'pigmentEnergy',
    referenceC: 120,
    phOrder: 'pigmentPhOrder',
    roasted: true,
  },
  amadori: { parameter: 'amadoriRate', energy: 'amadoriEnergy', referenceC: 120, phOrder: 'amadoriPhOrder' },
  amadoriDecay: { parameter: 'amadoriDecay', energy: 'amadoriDecayEnergy', referenceC: 120 },
  prepigment: { parameter: 'prepigmentRate', energy: 'prepigmentEnergy', referenceC: 120 },
} as const satisfies Record<string, RateFacts>;

export type RateName = keyof typeof rateTable;
export const rateNames = Object.keys(rateTable) as RateName[];

export function rateFacts(name: RateName): RateFacts {
  return rateTable[name];
}

const gasConstant = 8.314462618e-3;

/** Standard deviation of ln k at a temperature and pH: that of the constant, of its activation energy and of its pH order. */
export function lnRateSd(name: RateName, temperatureC: number, ph: number): number {
  const { parameter, energy, referenceC, phOrder, roasted } = rateFacts(name);
  const inverseK = 1 / (referenceC + 273.15) - 1 / (temperatureC + 273.15);
  const byEnergy = (reactionParameters[energy].sd / gasConstant) * inverseK;
  const byPh = phOrder ? reactionParameters[phOrder].sd * Math.LN10 * (ph - 6.8) : 0;
  const byRoast = roasted && temperatureC >= 148 ? reactionParameters.roastMultiplier.sd : 0;
  return Math.hypot(reactionParameters[parameter].sd, byEnergy, byPh, byRoast);
}
