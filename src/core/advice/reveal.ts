/** What was hidden in a rehearsal, against what the twin believed, and the surprises in it, against the alarms. */
import type { Kit } from '../pan/kit.ts';
import { modelParameters } from '../pan/model.ts';
import type { ModelParameter } from '../pan/physics.ts';
import type { Charge } from '../pan/steps.ts';
import { valueAt } from '../reactions/parameter.ts';
import { type Range, rangeOf } from '../twin/range.ts';
import { type UnseenName, unseenNames, unseenOf, unseenRanges } from '../twin/unseen.ts';
import type { AlarmChange } from './alarms/engine.ts';
import type { Rehearsal } from './rehearsal.ts';
import { type SurpriseName, surpriseKinds } from './surpriseKinds.ts';
import type { Surprised } from './surprises.ts';

/** Parameters of the kitchen that a cook can teach. */
const kitchenNames = [
  'stoveEfficiency',
  'stoveLagS',
  'lossFactor',
  'spoonFactor',
  'thermometerOffsetC',
  'thermometerLagS',
] as const satisfies readonly ModelParameter[];
export type KitchenName = (typeof kitchenNames)[number];

export interface Revealed<Name> {
  readonly name: Name;
  readonly hidden: number;
  readonly believed: Range;
  readonly inside: boolean;
}

/** A fault of the thermometer as it came, s: when its alarm sounded and it was right again, undefined where that never was. */
export interface RevealedSurprise {
  readonly name: SurpriseName;
  readonly beganS: number;
  readonly saidS: number | undefined;
  readonly rightS: number | undefined;
}

export interface Reveal {
  readonly pan: readonly Revealed<'temperatureC' | UnseenName>[];
  /** With what was held likely before the cook. */
  readonly kitchen: readonly (Revealed<KitchenName> & { readonly before: Range })[];
  /** Undefined where it was rehearsed without. */
  readonly surprises: readonly RevealedSurprise[] | undefined;
}

/** 10 % and 90 % marks of a normal distribution, in standard deviations. */
const score80 = 1.2816;

export function revealOf(rehearsal: Rehearsal, kit: Kit, charge: Charge): Reveal {
  const { hidden, twin } = rehearsal;
  const truth = unseenOf(hidden, charge);
  const unseen = unseenRanges(twin.members, charge);
  const parameters = modelParameters(kit);
  const temperatureC = rangeOf(twin.members.map((member) => member.temperatureC));
  return {
    pan: [
      revealed('temperatureC', hidden.temperatureC, temperatureC),
      ...unseenNames.map((name) => revealed(name, truth[name], unseen[name])),
    ],
    kitchen: kitchenNames.map((name) => {
      const at = (z: number): number => valueAt(parameters[name], z);
      const believed = rangeOf(twin.members.map(({ values }) => values[name]));
      const before = { low: at(-score80), mid: at(0), high: at(score80) };
      return { ...revealed(name, hidden.values[name], believed), before };
    }),
    surprises: rehearsal.surprises?.map((surprise) =>
      revealedSurprise(surprise, rehearsal.cook.alarms.history, rehearsal.timeS),
    ),
  };
}

/** @param endS when all was over */
export function revealedSurprise(
  { name, beganS, untilS }: Surprised,
  history: readonly AlarmChange[],
  endS: number,
): RevealedSurprise {
  const { alarm } = surpriseKinds[name];
  const said = history.find(
    (change) => change.alarm === alarm && change.what === 'sounded' && change.timeS >= beganS && change.timeS <= untilS,
  );
  return { name, beganS, saidS: said?.timeS, rightS: untilS <= endS ? untilS : undefined };
}

function revealed<Name>(name: Name, hidden: number, believed: Range): Revealed<Name> {
  return { name, hidden, believed, inside: hidden >= believed.low && hidden <= believed.high };
}
