/**
 * Many cooks that have their beginnings in common, simulated as a tree: what two of them share is cooked once, and a hold that differs in
 * length alone is cooked through once and left at each length. The field and the solver stand on this.
 */
import { filledPan } from '../../pan/deeds.ts';
import type { Kit } from '../../pan/kit.ts';
import type { Pan } from '../../pan/physics.ts';
import { createRun, type Run } from '../../pan/run.ts';
import type { Charge, Step } from '../../pan/steps.ts';
import { createExposureMeter, type Exposure, unexposed } from '../taste.ts';

/** Coarser than a plan's own simulation; bench/results/field.md tells by how much the colour differs. */
const tolerance = 1e-3;
const longestStepS = 60;
/** A cook is broken off after this time, as a plan's own is, s. */
const longestS = 6 * 3600;

export interface Branch {
  readonly charge: Charge;
  readonly steps: readonly Step[];
}

/** Where a branch has come to. */
export interface Reached {
  readonly y: Float64Array;
  readonly timeS: number;
  readonly exposure: Exposure;
  readonly poured: boolean;
}

interface Node extends Reached {
  /** By the step taken next, then by how long it was held (0 for steps that end by themselves). */
  readonly onward: Map<string, Map<number, Node>>;
}

export interface Branches {
  /** Where each branch ends, in the order given. What earlier calls cooked is not cooked again. */
  cook(branches: readonly Branch[]): readonly Reached[];
}

/** @param pan equations for the kit and one set of parameter values */
export function createBranches(pan: Pan, kit: Kit): Branches {
  const begun = new Map<string, Node>();

  function begin(charge: Charge): Node {
    const key = JSON.stringify(charge);
    const known = begun.get(key);
    if (known) return known;
    const y = filledPan(charge, kit, pan.values);
    const node = { y, timeS: 0, exposure: unexposed, poured: true, onward: new Map() };
    begun.set(key, node);
    return node;
  }

  /** Cooks a step from a node, to each of the lengths asked for that isn't known yet, ascending. */
  function through(from: Node, step: Step, minutes: readonly number[]): readonly Node[] {
    const meter = createExposureMeter(pan.values, from.exposure);
    const run = createRun({
      pan,
      kit,
      y: from.y.slice(),
      steps: [step],
      tolerance,
      longestStepS,
      keep: (timeS, y) => meter.take(timeS, y, pan.view.temperatureC),
    });
    const leftS = longestS - from.timeS;
    return minutes.map((held) => {
      const ended = 'reachedC' in step.end || step.letDown ? toItsEnd(run, leftS) : toHeld(run, held, leftS);
      return {
        y: run.y.slice(),
        timeS: from.timeS + run.timeS,
        exposure: meter.exposure,
        poured: ended,
        onward: new Map<string, Map<number, Node>>(),
      };
    });
  }

  function onwards(from: Node, depth: number, wanted: readonly Wanted[], found: Reached[]): void {
    const going: Wanted[] = [];
    for (const each of wanted) {
      if (depth === each.branch.steps.length || !from.poured) found[each.place] = from;
      else going.push(each);
    }
    for (const [key, alike] of groupedBy(going, ({ branch }) => keyOf(branch.steps[depth]))) {
      const known = from.onward.get(key) ?? new Map<number, Node>();
      from.onward.set(key, known);
      const byLength = groupedBy(alike, ({ branch }) => lengthOf(branch.steps[depth]));
      const missing = [...byLength.keys()].filter((length) => !known.has(length)).sort((a, b) => a - b);
      const [{ branch }] = alike;
      if (missing.length > 0) {
        const nodes = through(from, longest(branch.steps[depth], missing), missing);
        for (const [i, node] of nodes.entries()) known.set(missing[i], node);
      }
      for (const [length, same] of byLength) {
        const node = known.get(length) as Node;
        onwards(node, depth + 1, same, found);
        // Ends of cooks are many, and nothing goes on from them.
        if (same.every((each) => each.branch.steps.length === depth + 1)) known.delete(length);
      }
    }
  }

  return {
    cook(branches) {
      const found: Reached[] = new Array(branches.length);
      const wanted = branches.map((branch, place) => ({ branch, place }));
      for (const alike of groupedBy(wanted, ({ branch }) => JSON.stringify(branch.charge)).values()) {
        onwards(begin(alike[0].branch.charge), 0, alike, found);
      }
      return found;
    },
  };
}

interface Wanted {
  readonly branch: Branch;
  /** Its place in the list asked for. */
  readonly place: number;
}

/** All of a step but how long it is held. */
function keyOf(step: Step): string {
  return JSON.stringify({ ...step, end: 'reachedC' in step.end ? step.end : null });
}

function lengthOf({ end }: Step): number {
  return 'heldMinutes' in end ? end.heldMinutes : 0;
}

/** The step held as long as the longest asked for. */
function longest(step: Step, minutes: readonly number[]): Step {
  return 'heldMinutes' in step.end ? { ...step, end: { heldMinutes: minutes[minutes.length - 1] } } : step;
}

function toItsEnd(run: Run, longS: number): boolean {
  while (run.timeS < longS && run.act()) run.go(longS);
  return run.over;
}

/** Goes on until the person would end a hold of so many minutes, and no further. */
function toHeld(run: Run, minutes: number, longS: number): boolean {
  while (run.timeS < longS && !run.wouldEnd(minutes)) {
    if (!run.act()) break;
    const endS = run.heldFromS + 60 * minutes;
    run.go(Math.min(longS, endS > run.timeS ? endS : longS));
  }
  return run.timeS < longS;
}

function groupedBy<T, K>(list: readonly T[], keyed: (item: T) => K): Map<K, T[]> {
  const groups = new Map<K, T[]>();
  for (const item of list) {
    const key = keyed(item);
    const group = groups.get(key);
    if (group) group.push(item);
    else groups.set(key, [item]);
  }
  return groups;
}
