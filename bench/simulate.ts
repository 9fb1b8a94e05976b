/**
 * Speed and accuracy of the simulation: the reference cook of about two hours, all states, a row each second; against odex and LSODA
 * on the same equations between the same deeds; growth with tolerance and length; many draws.
 */
import { join } from 'node:path';
import type { Course } from '../src/core/pan/course.ts';
import { drawnValues } from '../src/core/pan/model.ts';
import { createPan } from '../src/core/pan/physics.ts';
import { type SimulationOptions, simulate } from '../src/core/pan/simulate.ts';
import { stateSize } from '../src/core/pan/state.ts';
import { drawOf } from '../src/core/planning/forecast.ts';
import { normalNumbers } from '../src/core/reactions/normal.ts';
import { type Cook, cookOf, referenceCook } from './measure/referenceCook.ts';
import { ms, publish, ratio, share, table } from './measure/report.ts';
import { type Timing, timed } from './measure/timing.ts';
import { type Difference, worstDifference } from './solvers/errors.ts';
import { hasLsoda, replayLsoda } from './solvers/lsoda.ts';
import { replayOdex } from './solvers/odex.ts';
import { replayOurs, temperaturesOf } from './solvers/replay.ts';

/** The bar of the design: two hours in 2 ms, within 1e-4 of a tight reference. */
const barMs = 2;
const barError = 1e-4;

function run({ recipe, prepared, values }: Cook, options: SimulationOptions = {}): Course {
  return simulate(recipe, prepared, values, options);
}

/** Evaluations of the equations in one simulation: each asks the boiling curve once. */
function evaluationsOf(cook: Cook): number {
  let count = 0;
  const { curve } = cook.prepared;
  const counting: typeof curve = {
    ...curve,
    boilsC(waterKg, holders, theta, startC) {
      count++;
      return curve.boilsC(waterKg, holders, theta, startC);
    },
  };
  run({ ...cook, prepared: { ...cook.prepared, curve: counting } });
  return count;
}

/** Time of evaluating the equations alone, along the course, us for one. */
async function evaluationUs(cook: Cook, course: Course): Promise<number> {
  const pan = createPan(cook.prepared, cook.values);
  const dy = new Float64Array(stateSize);
  const states = Array.from({ length: Math.floor(course.timeS.length / 5) }, (_, row) =>
    Float64Array.from(course.states, (column) => column[5 * row]),
  );
  const { leastMs } = await timed(() => {
    for (const y of states) pan.derivatives(y, dy);
  });
  return (1000 * leastMs) / states.length;
}

/** What is known of our own simulation before the others are tried. */
interface Ours {
  readonly cook: Cook;
  readonly course: Course;
  readonly time: Timing;
  readonly evaluations: number;
  readonly evaluationUs: number;
  /** Compares states in columns, at whole seconds, with the reference. */
  readonly judge: (states: Float64Array[]) => Difference;
  readonly error: Difference;
}

async function measureOurs(cook: Cook): Promise<Ours> {
  const course = run(cook);
  const tight = replayOurs(course, cook, 1e-10);
  return {
    cook,
    course,
    time: await timed(() => run(cook), 4),
    evaluations: evaluationsOf(cook),
    evaluationUs: await evaluationUs(cook, course),
    judge: (states) => worstDifference({ states, temperatureC: temperaturesOf(states, cook) }, tight),
    error: worstDifference(course, tight),
  };
}

async function summary(ours: Ours): Promise<string> {
  const { cook, course, time, evaluations, evaluationUs: us, judge, error } = ours;
  const bare = await timed(() => run(cook, { everyS: 1e9 }), 4);
  const making = await timed(() => createPan(cook.prepared, cook.values));
  const agreement = judge(replayOdex(course, cook, 1e-11).states);
  const equationsMs = (evaluations * us) / 1000;
  const rowsMs = time.leastMs - bare.leastMs;
  const parts = {
    'the equations': equationsMs,
    'stages, error, person, keeping': bare.leastMs - equationsMs - making.leastMs,
    'tables of one set of parameters': making.leastMs,
    rows: rowsMs,
  };
  const minutes = ((course.timeS.length - 1) / 60).toFixed(0);
  return `Reference cook: deep route, default kit, ${minutes} minutes, ${course.deeds.length} deeds, ${course.states.length} states, ${course.timeS.length} rows of 1 s.

- Time: **${ms(time)}**; bar ${barMs} ms: ${time.leastMs <= barMs ? 'kept' : 'missed'}. Without rows ${ms(bare)}.
- Greatest error over time: **${share(error.share)}** of the greatest value (${error.name}); bar ${barError}: ${error.share <= barError ? 'kept' : 'missed'}.
- The reference is our integrator at 1e-10; odex at 1e-11, which shares nothing with it but the equations, agrees within ${share(agreement.share)} (${agreement.name}).
- ${evaluations} evaluations of the equations, ${us.toFixed(2)} us each; a step of four with all that belongs to it ${((4000 * (bare.leastMs - making.leastMs)) / evaluations).toFixed(1)} us.

${table(
  ['spent on', 'ms', 'share'],
  Object.entries(parts).map(([name, part]) => [name, part.toFixed(2), `${((100 * part) / time.leastMs).toFixed(0)} %`]),
)}

Errors, here and below, are the worst of temperature, water, sucrose, pigment, acid and heat content, at any second, as a share of the greatest value.`;
}

async function againstOdex({ cook, course, time, evaluations, judge, error }: Ours): Promise<string> {
  const rows = [['ours, as used', String(evaluations), ms(time), '1', share(error.share), error.name]];
  for (const tolerance of [1e-4, 1e-5, 1e-6, 1e-7]) {
    const { states, evaluations: asked } = replayOdex(course, cook, tolerance);
    const taken = await timed(() => replayOdex(course, cook, tolerance));
    const off = judge(states);
    const by = ratio(taken.leastMs / time.leastMs);
    rows.push([`odex at ${share(tolerance)}`, String(asked), ms(taken), by, share(off.share), off.name]);
  }
  return `## Against odex

The same equations between the same deeds, with dense output each second.

${table(['method', 'evaluations', 'time, ms', 'ratio', 'error', 'in'], rows)}`;
}

async function againstLsoda({
  cook,
  course,
  time,
  evaluationUs: us,
  evaluations,
  judge,
  error,
}: Ours): Promise<string> {
  if (!hasLsoda()) return '## Against LSODA\n\nNot run: python3 with scipy is missing.';
  const script = join(process.cwd(), 'bench', 'solvers', 'lsoda.py');
  const floor = (asked: number) => (asked * us) / 1000;
  const rows = [
    ['ours', String(evaluations), '', time.leastMs.toFixed(1), floor(evaluations).toFixed(1), '1', share(error.share)],
  ];
  for (const tolerance of [1e-4, 1e-5, 1e-6, 1e-7]) {
    const runs = [];
    for (let i = 0; i < 3; i++) runs.push(await replayLsoda(course, cook, tolerance, script));
    const best = runs.reduce((a, b) => (b.solvingMs - b.waitedMs < a.solvingMs - a.waitedMs ? b : a));
    const reckoned = best.solvingMs - best.waitedMs + floor(best.evaluations);
    rows.push([
      `LSODA at ${share(tolerance)}`,
      String(best.evaluations),
      best.solvingMs.toFixed(0),
      reckoned.toFixed(1),
      floor(best.evaluations).toFixed(1),
      ratio(reckoned / time.leastMs),
      share(judge(best.states).share),
    ]);
  }
  return `## Against LSODA

It runs in Python and asks for every evaluation over a pipe, so its time is a reckoning: time in the solver, less time waiting at the pipe, plus
evaluations x ${us.toFixed(2)} us, our own cost of one (least of three runs). The last but two column is the evaluations alone.

${table(['method', 'evaluations', 'with the pipe, ms', 'reckoned, ms', 'evaluations alone, ms', 'ratio', 'error'], rows)}`;
}

async function growth({ cook, time }: Ours): Promise<string> {
  const tolerances: string[][] = [];
  for (const tolerance of [1e-3, 1e-4, 3e-5, 1e-5, 1e-6, 1e-7]) {
    const taken = await timed(() => run(cook, { tolerance }));
    const course = run(cook, { tolerance });
    const off = worstDifference(course, replayOurs(course, cook, 1e-9));
    tolerances.push([share(tolerance), ms(taken), ratio(taken.leastMs / time.leastMs), share(off.share), off.name]);
  }
  const lengths: string[][] = [];
  for (const invertMinutes of [10, 50, 100, 180]) {
    const other = cookOf({ invertMinutes, brownMinutes: 30 });
    const taken = await timed(() => run(other));
    const { timeS, deeds } = run(other);
    const minutes = (timeS.length - 1) / 60;
    lengths.push([minutes.toFixed(0), String(deeds.length), ms(taken), ((1000 * taken.leastMs) / minutes).toFixed(0)]);
  }
  return `## Growth

${table(['tolerance', 'time, ms', 'ratio', 'error', 'in'], tolerances)}

${table(['length, min', 'deeds', 'time, ms', 'us for each minute'], lengths)}`;
}

async function draws({ cook }: Ours): Promise<string> {
  const rows: string[][] = [];
  for (const count of [64, 256]) {
    const taken = await timed(() => {
      for (let i = 0; i < count; i++) drawOf(cook.plan, cook.prepared, 1, i);
    });
    rows.push([String(count), ms(taken), (taken.leastMs / count).toFixed(2)]);
  }
  const errors = Array.from({ length: 24 }, (_, i) => {
    const drawn = { ...cook, values: drawnValues(cook.prepared.kit, normalNumbers(i + 1)) };
    const course = run(drawn);
    return worstDifference(course, replayOurs(course, drawn, 1e-8)).share;
  }).sort((a, b) => a - b);
  return `## Draws of all uncertain numbers

With traces and colour, a row each 15 s, on one core. Error over 24 draws: median ${share(errors[12])}, worst ${share(errors[23])}.

${table(['draws', 'time, ms', 'ms each'], rows)}`;
}

const ours = await measureOurs(referenceCook());
publish('simulate', 'Simulation', [
  await summary(ours),
  await againstOdex(ours),
  await againstLsoda(ours),
  await growth(ours),
  await draws(ours),
]);
