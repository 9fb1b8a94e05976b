/**
 * What cooks and checks have taught of a kit, kept with it as data: where its uncertain numbers lie, how far they may still be off, and
 * which of them go together. All in standard scores of the spreads that are stated for any kit.
 */
import type { Parameter, Parameters } from '../reactions/parameter.ts';
import { cholesky, timesLower } from './cholesky.ts';
import type { ModelParameter } from './physics.ts';

/** What a check found of one number alone, whatever was known of it before: value and 10-90 % range, in the number's unit. */
export interface Measured {
  readonly name: ModelParameter;
  readonly low: number;
  readonly mid: number;
  readonly high: number;
}

/** Where something learned came from. */
export interface Lesson {
  readonly kind: 'cook' | 'check';
  /** The cook's id, or the check's name. */
  readonly name: string;
  /** When it was learned, RFC 3339 in UTC. */
  readonly at?: string | undefined;
  readonly measured?: readonly Measured[] | undefined;
  /** Readings and other measurements that it rests on. */
  readonly observations: number;
  /** How well it went with what was known before, against 1 when all is as stated. */
  readonly misfit: number;
}

export interface Learned {
  /** What was learned of, in the order of the rows below. */
  readonly names: readonly ModelParameter[];
  /** Standard score of the centre. */
  readonly centre: readonly number[];
  /** Covariance of the scores; the identity when nothing is known. */
  readonly covariance: readonly (readonly number[])[];
  /** In the order in which they were learned. */
  readonly lessons: readonly Lesson[];
}

/** Parameters with the centre and the spread that were learned. */
export function asLearned<Name extends string>(parameters: Parameters<Name>, learned?: Learned): Parameters<Name> {
  if (!learned) return parameters;
  const moved: Record<Name, Parameter> = { ...parameters };
  learned.names.forEach((name, i) => {
    const parameter = moved[name as string as Name];
    if (parameter) moved[name as string as Name] = movedTo(parameter, learned, i);
  });
  return moved;
}

function movedTo(parameter: Parameter, { centre, covariance, lessons }: Learned, i: number): Parameter {
  const { centre: before, sd, spread } = parameter;
  return {
    ...parameter,
    centre: spread === 'normal' ? before + sd * centre[i] : before * Math.exp(sd * centre[i]),
    sd: sd * Math.sqrt(covariance[i][i]),
    source: `learned of this kit: ${lessons.map(({ kind, name }) => `${kind} ${name}`).join(', ')}`,
    mark: 'derived',
    sdReason: 'what these left open',
  };
}

/** Turns independent scores, by name, into scores that go together as was learned. Spreads stay 1: the parameters bear them. */
export function goingTogether(
  scores: Readonly<Record<ModelParameter, number>>,
  { names, covariance }: Learned,
): Record<ModelParameter, number> {
  const n = names.length;
  const sd = covariance.map((row, i) => Math.sqrt(row[i]));
  const correlation = covariance.flatMap((row, i) => row.map((value, j) => value / (sd[i] * sd[j])));
  const drawn = timesLower(
    cholesky(correlation, n),
    names.map((name) => scores[name]),
  );
  const together = { ...scores };
  names.forEach((name, i) => {
    together[name] = drawn[i];
  });
  return together;
}

/** The rest of what was learned when some names no longer hold: after a new pan, or on request; nothing when none is left. */
export function without(learned: Learned, forgotten: readonly ModelParameter[]): Learned | undefined {
  const kept = learned.names.flatMap((name, i) => (forgotten.includes(name) ? [] : [i]));
  if (kept.length === 0) return undefined;
  return {
    names: kept.map((i) => learned.names[i]),
    centre: kept.map((i) => learned.centre[i]),
    covariance: kept.map((i) => kept.map((j) => learned.covariance[i][j])),
    lessons: learned.lessons.flatMap((lesson) => lessonWithout(lesson, forgotten)),
  };
}

/** A check of nothing but what is forgotten is forgotten with it. */
function lessonWithout(lesson: Lesson, forgotten: readonly ModelParameter[]): Lesson[] {
  if (!lesson.measured) return [lesson];
  const measured = lesson.measured.filter(({ name }) => !forgotten.includes(name));
  return measured.length > 0 ? [{ ...lesson, measured }] : [];
}
