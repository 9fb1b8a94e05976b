/** What is asked for, in kitchen units: one option for each field of a plan request. */
import {
  type Alkali,
  alkaliShares,
  defaultRequest,
  optionalRanges,
  type PlanRequest,
  requestRanges as ranges,
  usualActive,
  usualDissolveC,
} from '../../core/planning/request.ts';
import {
  flagOf,
  type Given,
  type Input,
  mapped,
  number,
  optional,
  percent,
  quantity,
  readAll,
  type Texts,
  word,
} from '../input.ts';
import { misused, Stop } from '../stop.ts';
import { stepInput } from './stepInput.ts';

const usual = defaultRequest;

function minutes(meaning: string, [low, high]: readonly [number, number], usualMinutes: number) {
  const input = mapped(quantity('duration', meaning, 'min', [60 * low, 60 * high]), (seconds) => seconds / 60);
  return optional(input, `${usualMinutes}min`);
}

function degrees(meaning: string, range: readonly [number, number], usualC: number) {
  return optional(quantity('temperature', meaning, 'C', range), `${usualC}C`);
}

const alkalis = { naoh: 'sodiumHydroxide', lime: 'calciumHydroxide' } as const satisfies Record<string, Alkali>;

const name: Input<string> = {
  placeholder: '<text>',
  meaning: 'what the plan is called',
  required: false,
  read: (text, field) => {
    if (/^\P{Cc}{1,80}$/u.test(text.trim())) return text.trim();
    return misused(field, text, 'cannot be a name', '1 to 80 characters on one line');
  },
};

const route = word('pale: acid alone; bright: alkaline browning; deep: then roast', ['pale', 'bright', 'deep']);
const alkali = mapped(word('sodium hydroxide or slaked lime', ['naoh', 'lime']), (each) => alkalis[each]);
const dose = number('alkali as pure substance for each kg of sugar', ranges.alkaliGPerKg, 'g/kg');
const strength = percent('alkali in the solution to prepare, per cent', ranges.solutionStrength);
const active = percent('hydroxide in the alkali as you weigh it, per cent', optionalRanges.alkaliActive);
const carbonate = percent('carbonate in it, per cent', optionalRanges.alkaliCarbonate);
const acid = number('citric acid for each kg of sugar', ranges.acidGPerKg, 'g/kg');
const malt = number('dry malt extract for each kg of sugar', ranges.maltExtractGPerKg, 'g/kg');

export const requestInputs = {
  name: optional(name, usual.name),
  mass: optional(quantity('mass', 'finished sugar wanted', 'g', ranges.massKg), `${usual.massKg * 1000}g`),
  form: optional(word('cast hard or let down to a syrup', ['hard', 'syrup']), usual.form),
  brix: optional(percent('solids of the syrup, per cent', ranges.syrupSolids), `${usual.syrupSolids * 100}`),
  route: optional(route, usual.route),
  alkali: optional(alkali, 'naoh'),
  dose: optional(dose, `${usual.alkaliGPerKg}`),
  strength: optional(strength, `${usual.solutionStrength * 100}`),
  active: optional(active, `${usualActive * 100}`),
  carbonate: optional(carbonate, '0'),
  acid: optional(acid, `${usual.acidGPerKg}`),
  malt: optional(malt, `${usual.maltExtractGPerKg}`),
  dissolve: degrees(
    'by when all sugar is dissolved: the water follows from it',
    optionalRanges.dissolveC,
    usualDissolveC,
  ),
  invert: degrees('middle of the inverting band', ranges.invertC, usual.invertC),
  invertTime: minutes('time in it', ranges.invertMinutes, usual.invertMinutes),
  brown: degrees('middle of the browning band', ranges.brownC, usual.brownC),
  brownTime: minutes('time in it', ranges.brownMinutes, usual.brownMinutes),
  roast: degrees('middle of the roasting band', ranges.roastC, usual.roastC),
  roastTime: minutes('time in it', ranges.roastMinutes, usual.roastMinutes),
  step: optional(stepInput),
};

type RequestOption = keyof typeof requestInputs;

/** The option of each field, to name in refusals. */
export const requestFields: Readonly<Record<keyof PlanRequest, RequestOption>> = {
  name: 'name',
  massKg: 'mass',
  form: 'form',
  syrupSolids: 'brix',
  route: 'route',
  alkali: 'alkali',
  alkaliGPerKg: 'dose',
  solutionStrength: 'strength',
  alkaliActive: 'active',
  alkaliCarbonate: 'carbonate',
  acidGPerKg: 'acid',
  maltExtractGPerKg: 'malt',
  dissolveC: 'dissolve',
  invertC: 'invert',
  invertMinutes: 'invertTime',
  brownC: 'brown',
  brownMinutes: 'brownTime',
  roastC: 'roast',
  roastMinutes: 'roastTime',
  moreHolds: 'step',
};

/** Options that say nothing unless the route or the form is right: dropping them silently would cost a batch. */
const onlyFor: readonly (readonly [RequestOption, (request: PlanRequest) => boolean, string])[] = [
  ['brix', ({ form }) => form === 'syrup', '--form syrup'],
  ['acid', ({ route }) => route === 'pale', '--route pale'],
  ...(['alkali', 'dose', 'strength', 'active', 'carbonate', 'brown', 'brownTime'] as const).map(
    (option) => [option, ({ route }: PlanRequest) => route !== 'pale', '--route bright or deep'] as const,
  ),
  ...(['roast', 'roastTime'] as const).map(
    (option) => [option, ({ route }: PlanRequest) => route === 'deep', '--route deep'] as const,
  ),
];

export function requestFrom(texts: Texts): PlanRequest {
  const given: Given<typeof requestInputs> = readAll(requestInputs, texts);
  const changes = Object.entries(requestFields)
    .map(([field, option]) => [field, given[option]] as const)
    .filter(([, value]) => value !== undefined);
  const request = { ...usual, ...Object.fromEntries(changes) } as PlanRequest;
  const { active: hydroxide, carbonate: soda } = alkaliShares(request);
  if (hydroxide + soda > 1 + 1e-9) {
    const message = '--active and --carbonate together are more than 100 %; allowed: 100 % at most';
    throw new Stop({ kind: 'misused', field: '--carbonate', message });
  }
  for (const [option, serves, needed] of onlyFor) {
    if (given[option] === undefined || serves(request)) continue;
    throw new Stop({
      kind: 'misused',
      field: flagOf(option),
      message: `${flagOf(option)} is of use with ${needed} alone`,
    });
  }
  return request;
}
