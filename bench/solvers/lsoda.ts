/** The same equations by LSODA in a Python process, which asks for every evaluation over a pipe. Left out where Python or scipy is missing. */
import { spawn, spawnSync } from 'node:child_process';
import type { Course } from '../../src/core/pan/course.ts';
import { filledPan } from '../../src/core/pan/deeds.ts';
import { createPan } from '../../src/core/pan/physics.ts';
import { movingCount, stateSize } from '../../src/core/pan/state.ts';
import type { Cook } from '../measure/referenceCook.ts';
import { rowsFor, stretchesOf } from './replay.ts';

export interface LsodaRun {
  readonly states: Float64Array[];
  readonly evaluations: number;
  /** Time in the solver, and the part of it spent waiting for evaluations over the pipe, ms. */
  readonly solvingMs: number;
  readonly waitedMs: number;
}

const frameBytes = 8 * (movingCount + 2);

export function hasLsoda(): boolean {
  return spawnSync('python3', ['-c', 'from scipy.integrate import odeint']).status === 0;
}

/** @param script path of lsoda.py */
export function replayLsoda(course: Course, cook: Cook, tolerance: number, script: string): Promise<LsodaRun> {
  const { prepared, values, recipe } = cook;
  const pan = createPan(prepared, values);
  const rows = rowsFor(course);
  const stretches = stretchesOf(course, cook).values();
  const y = filledPan(recipe.charge, prepared.kit, values);
  const row = new Float64Array(stateSize);
  const dy = new Float64Array(stateSize);
  const scale = pan.scale.subarray(0, movingCount).join(',');
  const python = spawn('python3', [script, String(tolerance), scale], { stdio: ['pipe', 'pipe', 'inherit'] });
  let started = false;
  let left = Buffer.alloc(0);

  function answer(first: number, second: number, body: Float64Array): void {
    const frame = Float64Array.of(first, second, ...body.subarray(0, movingCount));
    python.stdin.write(Buffer.from(frame.buffer));
  }

  function nextStretch(end: Float64Array): void {
    if (started) y.set(end);
    started = true;
    const { value: stretch } = stretches.next();
    stretch?.begin(y, pan);
    row.set(y);
    answer(stretch?.fromS ?? Number.NaN, stretch?.toS ?? Number.NaN, y);
  }

  return new Promise((resolve, reject) => {
    function take(frame: Float64Array): void {
      const [kind, time] = frame;
      const body = frame.subarray(2);
      if (kind === 2) nextStretch(body);
      else if (kind === 3) {
        const [solvingS, waitedS] = body;
        const spent = { solvingMs: 1000 * solvingS, waitedMs: 1000 * waitedS };
        resolve({ states: rows.states, evaluations: time, ...spent });
      } else {
        row.set(body);
        if (kind === 1) rows.keep(time, row);
        else {
          pan.derivatives(row, dy);
          answer(0, 0, dy);
        }
      }
    }
    python.on('error', reject);
    python.on('exit', (code) => {
      if (code !== 0) reject(new Error(`LSODA's process ended with ${code}`));
    });
    python.stdout.on('data', (chunk: Buffer) => {
      left = Buffer.concat([left, chunk]);
      for (; left.length >= frameBytes; left = left.subarray(frameBytes)) {
        take(new Float64Array(Uint8Array.from(left.subarray(0, frameBytes)).buffer));
      }
    });
  });
}
