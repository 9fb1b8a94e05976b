/** Shares the field out among workers: lines coarse to fine, then the draws of its band. A newer question ends the older one. */
import { type Remote, wrap } from 'comlink';
import type { Kit } from '../../../../core/pan/kit.ts';
import { bandDraws, type ColourBand, colourBand, type Knots } from '../../../../core/planning/field/band.ts';
import type { Lever } from '../../../../core/planning/field/levers.ts';
import { type FieldLine, type FieldSpec, fieldLines } from '../../../../core/planning/field.ts';
import type { FieldCook } from './field.worker.ts';

export interface FieldAsked {
  readonly spec: FieldSpec;
  readonly kit: Kit;
  readonly slid: Lever | undefined;
}

export interface FieldListener {
  line(line: FieldLine): void;
  band(band: ColourBand): void;
  failed(message: string): void;
}

/** One core is the page's and one the plan's. */
const mostWorkers = 3;
const workerCount = Math.min(mostWorkers, Math.max(1, navigator.hardwareConcurrency - 1));

/** The band's draws are many times the field's own work: they wait until the spot and the numbers have rested, ms. */
const bandRestMs = 800;

/** Started with the Desk, to be up by the time the field is asked for. */
const workers: readonly Remote<FieldCook>[] = Array.from({ length: workerCount }, () =>
  wrap<FieldCook>(new Worker(new URL('./field.worker.ts', import.meta.url), { type: 'module' })),
);
let turn = 0;

/** Works a field out; returns how to leave it. */
export function cookField({ spec, kit, slid }: FieldAsked, to: FieldListener): () => void {
  const own = ++turn;
  const wanted = (): boolean => own === turn;
  const opened = workers.map((cook) => cook.open(spec, kit, slid));
  /** Hands the tasks out, each to a worker that is free; what is asked before a worker has opened the field waits there, not here. */
  async function shared<Task>(tasks: readonly Task[], done: (cook: Remote<FieldCook>, task: Task) => Promise<void>) {
    const queue = tasks.values();
    await Promise.all(
      workers.map(async (cook, i) => {
        for (const task of queue) {
          if (!wanted()) return;
          await Promise.all([opened[i], done(cook, task)]);
        }
      }),
    );
  }
  async function all() {
    await shared(fieldLines(spec), async (cook, at) => {
      const line = await cook.line(at);
      if (wanted()) to.line(line);
    });
    await new Promise((rested) => setTimeout(rested, bandRestMs));
    const drawn: Knots[] = [];
    let middle: Knots | undefined;
    await shared([undefined, ...Array.from({ length: bandDraws }, (_, i) => i)], async (cook, number) => {
      const knots = await cook.knots(number);
      if (number === undefined) middle = knots;
      else drawn.push(knots);
    });
    if (wanted() && middle) to.band(colourBand(spec, middle, drawn));
  }
  all().catch((error: unknown) => wanted() && to.failed(error instanceof Error ? error.message : String(error)));
  return () => {
    if (wanted()) turn++;
  };
}
