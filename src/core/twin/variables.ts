/**
 * What the twin estimates, member by member: some states of the pan and every uncertain parameter, in coordinates without bounds
 * (logarithms of amounts, standard scores of parameters), grouped by what an observation may correct.
 */
import { dryEnthalpyJPerKg } from '../matter/heatCapacity.ts';
import { liquidEnthalpyJPerKg } from '../matter/water.ts';
import type { Kit } from '../pan/kit.ts';
import { modelParameters } from '../pan/model.ts';
import type { ModelParameter, ModelValues } from '../pan/physics.ts';
import { dissolvedKg, place } from '../pan/state.ts';
import { valueAt } from '../reactions/parameter.ts';
import { amount, amountMassKg } from '../reactions/rates.ts';

/**
 * Groups of estimated things. A thermometer says much about heat and water, and nothing about pigment: correlations of a sample
 * there are noise, and using them narrows the colour band falsely. So each observation corrects named groups alone.
 */
export type Group = (typeof groupNames)[number];
export const groupNames = ['heat', 'water', 'acidity', 'sugars', 'colour'] as const;

/** What stirring, draughts and a cycling ring change while it cooks. */
const wandering: readonly ModelParameter[] = [
  'lossFactor',
  'evaporationFactor',
  'surfaceRenewalS',
  'boilConductance',
  'thinFilm',
  'thickFilm',
  'dissolvingS',
  'stoveEfficiency',
];

/** What stays the same through a cook: the sugar's boiling curve, the thermometer, the stove's mass, the spoon. */
const lasting: readonly ModelParameter[] = [
  'boilingTheta',
  'thermometerLagS',
  'spoonFactor',
  'stoveLagS',
  'thermometerOffsetC',
];

const heatParameters: readonly ModelParameter[] = [...wandering, ...lasting];

const acidityParameters: readonly ModelParameter[] = [
  'acidPk',
  'sugarPk120',
  'maltBuffer',
  'maltPh',
  'acidPerHexose',
  'acidPerFragment',
  'neutralDecay140',
];

const sugarParameters: readonly ModelParameter[] = [
  'inversionRate130',
  'inversionEnergy',
  'waterOrder',
  'scissionRate150',
  'scissionEnergy',
];

function groupOf(name: ModelParameter): Group {
  if (heatParameters.includes(name)) return 'heat';
  if (acidityParameters.includes(name)) return 'acidity';
  return sugarParameters.includes(name) ? 'sugars' : 'colour';
}

/** Amounts estimated as logarithms, with their group. */
const amounts: readonly (readonly [number, Group])[] = [
  [place.waterKg, 'water'],
  [place.acid, 'acidity'],
  [place.sucrose, 'sugars'],
  [place.glucose, 'sugars'],
  [place.fructose, 'sugars'],
  [place.fragments, 'colour'],
  [place.caramel, 'colour'],
  [place.melanoidin, 'colour'],
];

/** Temperatures and heat flow, estimated as they are. */
const heats = [place.panC, place.burnerW, place.tipC] as const;

/** Amounts below this are not told apart from none, mol or kg. */
const trace = 1e-9;

export interface Member {
  /** State of this member's pan. */
  readonly y: Float64Array;
  /** Standard score of each parameter. */
  readonly scores: Float64Array;
}

export interface Variables {
  readonly count: number;
  /** Group of each coordinate. */
  readonly groups: readonly Group[];
  readonly parameterNames: readonly ModelParameter[];
  /** Places, among the scores, of the parameters that change while it cooks. */
  readonly wandering: readonly number[];
  valuesOf(scores: Float64Array): ModelValues;
  /** The same, when only scores of these groups differ from those that `before` was made of. */
  valuesAfter(before: ModelValues, scores: Float64Array, changed: readonly Group[]): ModelValues;
  /** Writes a member's coordinates to row `at` of `out`; `temperatureC` is that of its syrup. */
  read(member: Member, temperatureC: number, out: Float64Array, at: number): void;
  /** Takes coordinates back into the member, keeping heat content consistent with temperature. */
  write(member: Member, from: Float64Array, at: number): void;
}

/** Heat content of a state at a temperature, J above 0 C. */
function enthalpyAt(y: Float64Array, temperatureC: number): number {
  const t = Math.min(200, Math.max(0, temperatureC));
  const solids = dissolvedKg(y) + y[place.crystals] * amountMassKg[amount.sucrose];
  return y[place.waterKg] * liquidEnthalpyJPerKg(t) + solids * dryEnthalpyJPerKg(t);
}

export function createVariables(kit: Kit): Variables {
  const parameters = modelParameters(kit);
  const parameterNames = Object.keys(parameters) as ModelParameter[];
  const first = 1 + heats.length;
  const firstScore = first + amounts.length;
  const groups: Group[] = [
    'heat',
    ...heats.map(() => 'heat' as const),
    ...amounts.map(([, group]) => group),
    ...parameterNames.map(groupOf),
  ];
  const scoresOf = Object.fromEntries(
    groupNames.map((group) => [group, parameterNames.flatMap((name, i) => (groupOf(name) === group ? [i] : []))]),
  ) as Record<Group, number[]>;
  return {
    count: groups.length,
    groups,
    parameterNames,
    wandering: wandering.map((name) => parameterNames.indexOf(name)),
    valuesOf(scores) {
      const values = {} as Record<ModelParameter, number>;
      parameterNames.forEach((name, i) => {
        values[name] = valueAt(parameters[name], scores[i]);
      });
      return values;
    },
    valuesAfter(before, scores, changed) {
      const values: Record<ModelParameter, number> = { ...before };
      for (const group of changed) {
        for (const i of scoresOf[group]) values[parameterNames[i]] = valueAt(parameters[parameterNames[i]], scores[i]);
      }
      return values;
    },
    read({ y, scores }, temperatureC, out, at) {
      out[at] = temperatureC;
      heats.forEach((index, i) => {
        out[at + 1 + i] = y[index];
      });
      amounts.forEach(([index], i) => {
        out[at + first + i] = Math.log(Math.max(y[index], trace));
      });
      out.set(scores, at + firstScore);
    },
    write(member, from, at) {
      const { y, scores } = member;
      heats.forEach((index, i) => {
        y[index] = from[at + 1 + i];
      });
      y[place.burnerW] = Math.max(0, y[place.burnerW]);
      amounts.forEach(([index], i) => {
        y[index] = Math.exp(from[at + first + i]);
      });
      y[place.enthalpyJ] = enthalpyAt(y, from[at]);
      scores.set(from.subarray(at + firstScore, at + firstScore + scores.length));
    },
  };
}
