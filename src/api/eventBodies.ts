/** Bodies of a cook's events as they come in, kind by kind. */
import {
  type CorrectableKind,
  dropBehaviours,
  type EventKind,
  readingQualities,
  readingUnits,
} from '../core/log/bodies.ts';
import { eventRanges as ranges } from '../core/log/ranges.ts';
import type { AlkaliPart, StepKind } from '../core/pan/steps.ts';
import { countIn, exactly, numberIn, oneOf, personsName, recordId } from './field.ts';
import { kitSchema } from './kit.ts';
import { planRequestSchema } from './planRequest.ts';
import { refusal } from './refusalWords.ts';
import { z } from './zod.ts';

const stepKinds = ['dissolve', 'climb', 'invert', 'brown', 'roast', 'cast', 'letDown'] as const satisfies StepKind[];
const substances = ['sodiumHydroxide', 'calciumHydroxide'] as const satisfies AlkaliPart['substance'][];

/** Text of a person over one or more lines. */
function remark(mostCharacters: number) {
  const error = refusal(`1 to ${mostCharacters} characters of text`);
  return z
    .string({ error })
    .regex(/^[^\p{Cc}]*(?:[\n\t][^\p{Cc}]*)*$/u, { error })
    .min(1, { error })
    .max(mostCharacters, { error });
}

/** What is in one field of an object that a rule of several fields refused. */
function part({ input }: { readonly input?: unknown }, field: string) {
  return { input: (input as Readonly<Record<string, unknown>> | undefined)?.[field] };
}

const mass = numberIn([0, 50]);
const limitsC = [-50, 250] as const;
const temperatureC = numberIn(limitsC);
const heldMinutes = [0, 1440] as const;
const notch = numberIn(ranges.notch);
const alkaliPart = {
  substance: oneOf(substances),
  alkaliKg: numberIn(ranges.alkaliKg),
  waterKg: numberIn(ranges.waterKg),
};
const alkaliParts = z.array(exactly(alkaliPart)).max(ranges.alkaliPart[1]).readonly();

const step = exactly({
  kind: oneOf(stepKinds),
  bandC: z.tuple([temperatureC, temperatureC]).readonly(),
  end: z.union([exactly({ reachedC: temperatureC }), exactly({ heldMinutes: numberIn(heldMinutes) })], {
    error: refusal(
      `{"reachedC": ${limitsC.join(' to ')}} or {"heldMinutes": ${heldMinutes.join(' to ')}}, one of them alone`,
    ),
  }),
  approachNotch: notch,
  holdNotch: notch,
  alkali: alkaliParts,
  waitS: numberIn([0, 86_400]),
  letDown: exactly({ solids: numberIn([0, 1]), hotPortionKg: mass, coolPortionKg: mass }).exactOptional(),
});

const begun = exactly({
  mode: oneOf(['live', 'rehearsal']),
  rehearsal: exactly({
    seed: countIn(ranges.seed),
    speed: numberIn(ranges.speed),
    surprises: z.boolean().exactOptional().describe('Whether its thermometer fails now and then, to be practised.'),
  }).nullable(),
  planId: recordId().nullable(),
  request: planRequestSchema,
  amounts: exactly({
    charge: exactly({ sucroseKg: mass, waterKg: mass, maltExtractKg: mass, citricAcidKg: mass }),
    alkali: exactly({
      substance: oneOf(substances),
      weighedKg: mass,
      pureKg: mass,
      waterKg: mass,
      strength: numberIn([0, 1]),
      parts: alkaliParts,
      equivalents: numberIn([0, 100]),
    }).nullable(),
  }),
  steps: z.array(step).min(1).max(ranges.stepIndex[1]).readonly(),
  kit: kitSchema,
}).refine(({ mode, rehearsal }) => (mode === 'rehearsal') === (rehearsal !== null), {
  path: ['rehearsal'],
  error: (issue) => refusal('seed and speed for a rehearsal, null for a live cook')(part(issue, 'rehearsal')),
});

const reading = exactly({
  probe: personsName(40),
  valueC: numberIn(ranges.valueC).nullable(),
  quality: oneOf(readingQualities),
  unit: oneOf(readingUnits),
  raw: z
    .union([z.number(), z.string().max(100)], { error: refusal('a number, up to 100 characters of text, or null') })
    .nullable()
    .describe('What the source sent, in `unit`.'),
}).refine(
  ({ valueC, quality }) => (valueC === null ? quality === 'lost' || quality === 'doubtful' : quality !== 'lost'),
  {
    path: ['quality'],
    error: (issue) =>
      refusal('lost or doubtful when valueC is null, and not lost when there is a value')(part(issue, 'quality')),
  },
);

const nothing = exactly({});
const alarm = personsName(80);

const correctable = {
  reading,
  heat: exactly({ notch }),
  water: exactly({
    waterKg: numberIn(ranges.waterKg),
    spoonfuls: numberIn(ranges.spoonfuls),
    spoon: personsName(40).nullable(),
  }),
  alkali: exactly({ part: countIn(ranges.alkaliPart), ...alkaliPart }),
  stir: nothing,
  spoonTest: exactly({
    a430: numberIn(ranges.a430).nullable(),
    behaviour: oneOf(dropBehaviours).nullable(),
    taste: z.array(personsName(40)).max(20).readonly(),
  }),
  note: exactly({ text: remark(2000) }),
  photo: exactly({ reference: personsName(200) }),
  step: exactly({ index: countIn(ranges.stepIndex) }),
  poured: nothing,
  weight: exactly({ grossKg: numberIn(ranges.grossKg), tareKg: numberIn(ranges.tareKg) }),
  dilutionPh: exactly({
    ph: numberIn(ranges.ph),
    syrupKg: numberIn(ranges.syrupKg),
    waterKg: numberIn(ranges.dilutionWaterKg),
  }),
  dilutionBrix: exactly({
    brix: numberIn(ranges.brix),
    syrupKg: numberIn(ranges.syrupKg),
    waterKg: numberIn(ranges.dilutionWaterKg),
    temperatureC: numberIn(ranges.dilutionC),
  }),
  foam: exactly({ rising: z.boolean() }),
  here: nothing,
  vouched: exactly({ probe: personsName(40) }),
  probeUnit: exactly({ probe: personsName(40), unit: oneOf(readingUnits), from: recordId().nullable() }),
  seen: exactly({ alarm }),
  putAside: exactly({ alarm, forS: numberIn(ranges.putAsideS), reason: personsName(200) }),
  clock: exactly({ wallMs: z.number(), monoMs: z.number() }),
  ended: exactly({ how: oneOf(['done', 'abandoned']) }),
} as const satisfies Record<CorrectableKind, z.ZodType>;

/** The error of a choice by `kind`. */
export function kindError(kinds: readonly string[]) {
  return (issue: { readonly code?: string; readonly input?: unknown }) =>
    issue.code === 'invalid_union'
      ? refusal(kinds.join(', '))(part(issue, 'kind'))
      : refusal('an object with a `kind`')(issue);
}

const correctionOf = <K extends CorrectableKind>(kind: K) =>
  exactly({ corrects: recordId(), kind: z.literal(kind), body: z.nullable(correctable[kind]) });

const correction = z.discriminatedUnion(
  'kind',
  [
    correctionOf('reading'),
    correctionOf('heat'),
    correctionOf('water'),
    correctionOf('alkali'),
    correctionOf('stir'),
    correctionOf('spoonTest'),
    correctionOf('note'),
    correctionOf('photo'),
    correctionOf('step'),
    correctionOf('poured'),
    correctionOf('weight'),
    correctionOf('dilutionPh'),
    correctionOf('dilutionBrix'),
    correctionOf('foam'),
    correctionOf('here'),
    correctionOf('vouched'),
    correctionOf('probeUnit'),
    correctionOf('seen'),
    correctionOf('putAside'),
    correctionOf('clock'),
    correctionOf('ended'),
    exactly({ corrects: recordId(), kind: z.literal('correction'), body: z.null() }),
  ],
  { error: kindError([...Object.keys(correctable), 'correction']) },
);

export const eventBodySchemas = { begun, ...correctable, correction } as const satisfies Record<EventKind, z.ZodType>;
