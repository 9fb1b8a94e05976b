/** Uncertain numbers of a kit: what the ring gives, what the pan loses, how the thermometer and the cook err. */
import type { Parameter, Parameters } from '../reactions/parameter.ts';
import type { StoveKind, ThermometerKind } from './kit.ts';
import { asLearned, type Learned } from './learned.ts';

const stoveStudies =
  'US DOE shares (gas 0.40, electric 0.74, induction 0.84) and quart-of-water tests as quoted; set for a 16-20 cm pan';

function efficiency(centre: number, sd: number): Parameter {
  return {
    meaning: "share of the ring's rated power that reaches the pan",
    centre,
    sd,
    spread: 'normal',
    within: [0.15, 0.95],
    unit: '1',
    source: stoveStudies,
    mark: 'assumed',
    sdReason: 'pan and ring differ in size and fit',
  };
}

function lag(centre: number): Parameter {
  return {
    meaning: 'time constant of the ring after a change of setting',
    centre,
    sd: 0.35,
    spread: 'lognormal',
    unit: 's',
    source: 'gas about 10 s, induction 5 s, coil 60-120 s, ceramic 100-200 s',
    mark: 'assumed',
    sdReason: 'range given for each kind',
  };
}

const stovePriors: Record<StoveKind, { efficiency: Parameter; lag: Parameter }> = {
  gas: { efficiency: efficiency(0.35, 0.08), lag: lag(10) },
  coil: { efficiency: efficiency(0.6, 0.12), lag: lag(90) },
  ceramic: { efficiency: efficiency(0.65, 0.1), lag: lag(140) },
  induction: { efficiency: efficiency(0.78, 0.06), lag: lag(5) },
};

const offsetSd: Record<ThermometerKind, number> = { digital: 0.5, dial: 1 };

const practice = 'common practice, no source';

/** The uncertain numbers that do not depend on the kind of stove or thermometer. */
const commonParameters = {
  lossFactor: {
    meaning: 'heat lost by pan and surface, times the free-convection correlations',
    centre: 1,
    sd: 0.25,
    spread: 'lognormal',
    unit: '1',
    source: 'Churchill & Chu 1975 and McAdams correlations with radiation; draughts and hoods differ',
    mark: 'assumed',
    sdReason: 'usual scatter of such correlations in a kitchen',
  },
  evaporationFactor: {
    meaning: 'evaporation below the boil, times the heat-and-mass analogy',
    centre: 1,
    sd: 0.3,
    spread: 'lognormal',
    unit: '1',
    source: 'Chilton-Colburn analogy against the Shah correlation for water pools',
    mark: 'derived',
    sdReason: 'the two agree within 30 %',
  },
  surfaceRenewalS: {
    meaning: 'time for which stirring leaves a patch of surface',
    centre: 6,
    sd: 0.6,
    spread: 'lognormal',
    unit: 's',
    source: practice,
    mark: 'assumed',
    sdReason: 'stirred each second to hardly stirred',
  },
  boilConductance: {
    meaning: 'boiling heat flow for each K of superheat and m2 of surface',
    centre: 10e3,
    sd: 0.4,
    spread: 'lognormal',
    unit: 'W/(m2 K)',
    source: 'a bulk superheat of 1-3 K at a full boil',
    mark: 'assumed',
    sdReason: 'depends on the pan wall and on foam',
  },
  thinFilm: {
    meaning: 'heat transfer from pan to thin boiling syrup (80 % solids or less)',
    centre: 2000,
    sd: 0.3,
    spread: 'lognormal',
    unit: 'W/(m2 K)',
    source: 'range 1500-3000',
    mark: 'assumed',
    sdReason: 'range given',
  },
  thickFilm: {
    meaning: 'heat transfer from pan to thick syrup (96 % solids or more), stirred',
    centre: 350,
    sd: 0.35,
    spread: 'lognormal',
    unit: 'W/(m2 K)',
    source: 'range 200-500',
    mark: 'assumed',
    sdReason: 'range given',
  },
  boilingTheta: {
    meaning: 'where the batch lies between the published boiling curves',
    centre: 0,
    sd: 1,
    spread: 'normal',
    within: [-3, 3],
    unit: '1',
    source: 'spread of the published tables (8 C at 90 % solids)',
    mark: 'derived',
    sdReason: 'one standard deviation by construction',
  },
  dissolvingS: {
    meaning: 'time constant of sugar dissolving in stirred water far from saturation',
    centre: 45,
    sd: 0.4,
    spread: 'lognormal',
    unit: 's',
    source: practice,
    mark: 'assumed',
    sdReason: 'depends on stirring and crystal size',
  },
  causticMixingS: {
    meaning: 'time constant for dissolved alkali to mix in',
    centre: 15,
    sd: 0.4,
    spread: 'lognormal',
    unit: 's',
    source: 'alkali is spent as fast as it mixes, well under a minute',
    mark: 'assumed',
    sdReason: 'stirring',
  },
  limeReleaseS: {
    meaning: 'time constant for slaked lime to dissolve into hot syrup',
    centre: 120,
    sd: 0.5,
    spread: 'lognormal',
    unit: 's',
    source: 'slurry dissolves incompletely and slowly',
    mark: 'assumed',
    sdReason: 'grain size unknown',
  },
  thermometerLagS: {
    meaning: 'time constant of the thermometer',
    centre: 6,
    sd: 0.4,
    spread: 'lognormal',
    unit: 's',
    source: 'range 2-15 s',
    mark: 'assumed',
    sdReason: 'range given',
  },
  spoonFactor: {
    meaning: 'water in a spoonful, times the spoon’s volume',
    centre: 1,
    sd: 0.1,
    spread: 'lognormal',
    unit: '1',
    source: practice,
    mark: 'assumed',
    sdReason: 'heaped or shy by habit; the scatter of single spoonfuls (20 %) is apart',
  },
} as const satisfies Parameters<string>;

export type KitParameter = keyof typeof commonParameters | 'stoveEfficiency' | 'stoveLagS' | 'thermometerOffsetC';

/** The uncertain numbers of a kit, with what was learned of it. */
export function kitParameters(kit: {
  readonly stove: { readonly kind: StoveKind };
  readonly thermometer: { readonly kind: ThermometerKind };
  readonly learned?: Learned | undefined;
}): Parameters<KitParameter> {
  const stove = stovePriors[kit.stove.kind];
  const stated: Parameters<KitParameter> = {
    ...commonParameters,
    stoveEfficiency: stove.efficiency,
    stoveLagS: stove.lag,
    thermometerOffsetC: {
      meaning: 'what the thermometer shows above the truth',
      centre: 0,
      sd: offsetSd[kit.thermometer.kind],
      spread: 'normal',
      within: [-4, 4],
      unit: 'K',
      source: 'dial 1 C, digital 0.5 C',
      mark: 'assumed',
      sdReason: 'as stated',
    },
  };
  return asLearned(stated, kit.learned);
}
