/**
 * The reactions of the pan as declarations: what goes in, what comes out, how fast.
 * `rates.ts` computes the same scheme by hand for speed; a test holds it against these declarations, and checks that atoms balance.
 */
import type { ReactionParameter } from './parameters.ts';

/** Atoms in one mole; `amine` counts the whole R-NH2 group, whose mass is part of the malt extract's. */
export interface Formula {
  readonly c: number;
  readonly h: number;
  readonly o: number;
  readonly amine?: number;
}

const hexoseUnit: Formula = { c: 6, h: 12, o: 6 };

export const species = {
  sucrose: { c: 12, h: 22, o: 11 },
  glucose: hexoseUnit,
  fructose: hexoseUnit,
  water: { c: 0, h: 2, o: 1 },
  amine: { c: 0, h: 0, o: 0, amine: 1 },
  amadori: { c: 6, h: 10, o: 5, amine: 1 },
  prepigment: { c: 6, h: 10, o: 5, amine: 1 },
  boundAmine: { c: 0, h: 0, o: 0, amine: 1 },
  melanoidin: { c: 6, h: 10, o: 5 },
  fragments: hexoseUnit,
  colourless: hexoseUnit,
  /** Per hexose unit: caramelan, C24H36O18 (Gélis 1858, from memory). */
  caramel: { c: 6, h: 9, o: 4.5 },
  hmf: { c: 6, h: 6, o: 3 },
} as const satisfies Record<string, Formula>;

export type Species = keyof typeof species;

/** Amounts of each species used up (negative) or formed by one mole of reaction; `acid` counts equivalents of acid set free. */
export type Stoichiometry = Partial<Record<Species | 'acid', number>>;

export interface Reaction {
  readonly name: string;
  readonly change: (p: Readonly<Record<ReactionParameter, number>>) => Stoichiometry;
  readonly law: string;
}

export const scheme: readonly Reaction[] = [
  {
    name: 'inversion',
    change: () => ({ sucrose: -1, water: -1, glucose: 1, fructose: 1 }),
    law: 'waterDensity / (waterDensity + lastWater) (inversionRate aH waterDensity^waterOrder + scissionRate) [sucrose]',
  },
  {
    name: 'isomerisation',
    change: () => ({ glucose: -1, fructose: 1 }),
    law: '10^(hydroxideOrder (pH - 6.8)) (glucoseToFructose [glucose] - fructoseToGlucose [fructose])',
  },
  {
    name: 'decay of fructose',
    change: (p) => ({ fructose: -1, fragments: 1, acid: p.acidPerHexose }),
    law: '(10^(hydroxideOrder (pH - 6.8)) fructoseDecay + neutralDecay) [fructose]',
  },
  {
    name: 'decay of glucose',
    change: (p) => ({ glucose: -1, fragments: 1, acid: p.acidPerHexose }),
    law: '10^(hydroxideOrder (pH - 6.8)) glucoseDecay [glucose]',
  },
  {
    name: 'fading',
    change: (p) => ({ fragments: -1, colourless: 1, acid: p.acidPerFragment }),
    law: 'fragmentFade [fragments]',
  },
  {
    name: 'caramel pigment',
    change: () => ({ fragments: -1, caramel: 1, water: 1.5 }),
    law: '10^(pigmentPhOrder (pH - 6.8)) roast (pigmentFirst [fragments] + 2 pigmentSecond [fragments]^2)',
  },
  {
    name: 'Amadori from glucose',
    change: () => ({ amine: -1, glucose: -1, amadori: 1, water: 1 }),
    law: '10^(amadoriPhOrder (min(pH, 8.5) - 6.8)) amadoriRate [amine] [glucose]',
  },
  {
    name: 'Amadori from fructose',
    change: () => ({ amine: -1, fructose: -1, amadori: 1, water: 1 }),
    law: '10^(amadoriPhOrder (min(pH, 8.5) - 6.8)) amadoriRate [amine] [fructose]',
  },
  {
    name: 'Amadori to pre-pigment',
    change: () => ({ amadori: -1, prepigment: 1 }),
    law: 'prepigmentShare amadoriDecay [amadori]',
  },
  {
    name: 'Amadori to fragments',
    change: () => ({ amadori: -1, water: -1, amine: 1, fragments: 1, acid: 0.5 }),
    law: '(1 - prepigmentShare) amadoriDecay [amadori]',
  },
  {
    name: 'melanoidin',
    change: ({ sugarPerMelanoidin: n }) => ({
      prepigment: -1,
      fragments: 1 - n,
      melanoidin: n,
      boundAmine: 1,
      water: n - 1,
    }),
    law: 'prepigmentRate [prepigment]',
  },
  {
    name: 'dehydration to HMF',
    change: () => ({ fructose: -1, hmf: 1, water: 3 }),
    law: 'hmfRate aH / 55.5 [fructose]',
  },
];
