/**
 * The field: every sugar that a kit can make over two levers of the cook, each spot simulated with the kit's central values. It comes in
 * lines, coarse to fine, which may be shared out among workers; each worker keeps what its lines have in common.
 */
import type { Refusal } from '../advice/limits.ts';
import { dropColour } from '../colour/drop.ts';
import { ebcFromA430 } from '../colour/scales.ts';
import type { Srgb } from '../colour/srgb.ts';
import { syrupColour } from '../colour/syrup.ts';
import { centralValues } from '../pan/model.ts';
import { createPan, type ModelValues } from '../pan/physics.ts';
import type { PreparedKit } from '../pan/preparedKit.ts';
import { type Amounts, amountsFor } from './amounts.ts';
import { type Branch, type Branches, createBranches } from './field/branches.ts';
import { type Axis, axisValue, leverNames, requireAxis, usualAxis } from './field/levers.ts';
import { type Made, madeOf } from './field/made.ts';
import { coarseToFine } from './field/order.ts';
import { contentsOf, panFit } from './panFit.ts';
import { refusalsOf } from './refusals.ts';
import { type PlanRequest, requireRequest } from './request.ts';
import { stepsFor } from './steps.ts';

/** Plain data, so that it can be handed to a worker. */
export interface FieldSpec {
  /** What all spots have in common; its own values of the two levers don't matter. */
  readonly request: PlanRequest;
  readonly x: Axis;
  readonly y: Axis;
}

/** A sugar as it is shown. */
export interface Shown {
  readonly ebc: number;
  /** As a drop on a white plate, and as 1 cm of a 10 % solution, where dark sugars are told apart as well. */
  readonly drop: Srgb;
  readonly glass: Srgb;
}

export interface Spot {
  /** Limits that a plan for this spot would break; what it would make is not worked out then. */
  readonly refusals: readonly Refusal[];
  /** Nothing when it is refused, or not done within six hours. */
  readonly made: (Made & Shown) | undefined;
}

/** One line of the field: the spots of one value of the lever that is pulled first. */
export interface FieldLine {
  readonly along: 'x' | 'y';
  /** Place on the other axis. */
  readonly at: number;
  readonly spots: readonly Spot[];
}

/** The picture that the Desk opens with: alkali against browning hold, or what a pale sugar has instead. */
export function usualField(request: PlanRequest, columns = 48, rows = 32): FieldSpec {
  const [x, y] =
    request.route === 'pale'
      ? (['maltExtractGPerKg', 'invertMinutes'] as const)
      : (['alkaliGPerKg', 'brownMinutes'] as const);
  return { request, x: usualAxis(x, request, columns), y: usualAxis(y, request, rows) };
}

/** @throws RangeError naming what is wrong with it */
function requireField({ request, x, y }: FieldSpec): void {
  requireAxis(x);
  requireAxis(y);
  if (x.lever === y.lever)
    throw new RangeError(`both levers of the field are ${x.lever}; allowed are two different ones`);
  requireRequest({ ...request, [x.lever]: x.low, [y.lever]: y.low });
}

export function requestAt({ request, x, y }: FieldSpec, column: number, row: number): PlanRequest {
  return { ...request, [x.lever]: axisValue(x, column), [y.lever]: axisValue(y, row) };
}

/** Lines run along the lever that the cook meets last: their spots have the most in common. */
function runsAlong({ x, y }: FieldSpec): 'x' | 'y' {
  return leverNames.indexOf(x.lever) > leverNames.indexOf(y.lever) ? 'x' : 'y';
}

/** Places of the lines, coarse to fine. */
export function fieldLines(spec: FieldSpec): readonly number[] {
  return coarseToFine(runsAlong(spec) === 'x' ? spec.y.count : spec.x.count);
}

export interface Field {
  /** Sugar weighed in at every spot, kg: so much that the middle of the field gives the mass asked for. */
  readonly sucroseKg: number;
  /** @param at one of `fieldLines` */
  line(at: number): FieldLine;
  /** The same field with another setting of the request, such as the roast's hold: what both have in common is not cooked again. */
  further(changes: Partial<PlanRequest>): Field;
}

export interface FieldOptions {
  /** What the pan is really like, for a draw; the centre of every spread unless given. Steps are planned for the centre all the same. */
  readonly values?: ModelValues;
  /** From a former field, to spare finding it again; and what that field has cooked, of the same kit and values. */
  readonly sucroseKg?: number;
  readonly branches?: Branches;
}

/** @throws RangeError when `requireField` does */
export function createField(spec: FieldSpec, prepared: PreparedKit, options: FieldOptions = {}): Field {
  requireField(spec);
  const central = centralValues(prepared.kit);
  const { values = central } = options;
  const branches = options.branches ?? createBranches(createPan(prepared, values), prepared.kit);
  const along = runsAlong(spec);

  function branchOf(request: PlanRequest, sucroseKg: number): Branch & { readonly amounts: Amounts } {
    const amounts = amountsFor(request, sucroseKg);
    return { charge: amounts.charge, steps: stepsFor({ request, amounts, prepared, values: central }), amounts };
  }

  /** Twice, as a plan is sized. */
  function sized(): number {
    const middle = requestAt(spec, (spec.x.count - 1) / 2, (spec.y.count - 1) / 2);
    let sucroseKg = middle.massKg * (middle.form === 'hard' ? 1 : middle.syrupSolids);
    for (let round = 0; round < 2; round++) {
      const branch = branchOf(middle, sucroseKg);
      const [reached] = createBranches(createPan(prepared, central), prepared.kit).cook([branch]);
      sucroseKg *= middle.massKg / madeOf(reached, branch.amounts, central).yieldKg;
    }
    return sucroseKg;
  }
  const sucroseKg = options.sucroseKg ?? sized();

  return {
    sucroseKg,
    line(at) {
      const requests = Array.from({ length: spec[along].count }, (_, i) =>
        along === 'x' ? requestAt(spec, i, at) : requestAt(spec, at, i),
      );
      const wanted = requests.map((request) => branchOf(request, sucroseKg));
      const refusals = requests.map((request, i) => {
        const { amounts } = wanted[i];
        return refusalsOf(
          request,
          prepared.kit,
          amounts,
          panFit(prepared.kit.pan, contentsOf(amounts.charge), sucroseKg),
        );
      });
      const allowed = wanted.filter((_, i) => refusals[i].length === 0);
      const reached = branches.cook(allowed).values();
      const spots = wanted.map(({ amounts }, i): Spot => {
        const end = refusals[i].length === 0 ? reached.next().value : undefined;
        return { refusals: refusals[i], made: end?.poured ? shown(madeOf(end, amounts, values)) : undefined };
      });
      return { along, at, spots };
    },
    further: (changes) =>
      createField({ ...spec, request: { ...spec.request, ...changes } }, prepared, { values, sucroseKg, branches }),
  };
}

function shown(made: Made): Spot['made'] {
  const { a430, specific430, hueIndex, waterShare } = made;
  return {
    ...made,
    ebc: ebcFromA430(a430),
    drop: dropColour(specific430, hueIndex, waterShare),
    glass: syrupColour(a430, 1, hueIndex),
  };
}
