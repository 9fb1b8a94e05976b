/** Shares the field out among workers: lines coarse to fine, then the draws of its band. A newer question ends the older one. */
import { type Remote, wrap } from 'comlink';
import type { Kit } from '../../../../core/pan/kit.ts';
import { bandDraws, type ColourBand, colourBand, type Knots } from '../../../../core/planning/field/band.ts';
import { type Axis, type Lever, withinLimit } from '../../../../core/planning/field/levers.ts';
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

let cooks: readonly Remote<FieldCook>[] | undefined;
let turn = 0;

function startCooks(): readonly Remote<FieldCook>[] {
  return Array.from({ length: workerCount }, () =>
    wrap<FieldCook>(new Worker(new URL('./field.worker.ts', import.meta.url), { type: 'module' })),
  );
}

/** Works a field out; returns how to leave it. */
export function cookField({ spec, kit, slid }: FieldAsked, to: FieldListener): () => void {
  const own = ++turn;
  cooks ??= startCooks();
  const workers = cooks;
  const wanted = (): boolean => own === turn;
  const opened = workers.map((cook) => cook.open(spec, kit, slid));
  /** Hands the tasks out, each to a worker that is free; the first that is open begins. */
  async function shared<Task>(tasks: readonly Task[], done: (cook: Remote<FieldCook>, task: Task) => Promise<void>) {
    const queue = tasks.values();
    await Promise.all(
      workers.map(async (cook, i) => {
        await opened[i];
        for (const task of queue) {
          if (!wanted()) return;
          await done(cook, task);
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
    if (wanted() && middle) to.band(overField(spec, colourBand(middle, drawn)));
  }
  all().catch((error: unknown) => wanted() && to.failed(error instanceof Error ? error.message : String(error)));
  return () => {
    if (wanted()) turn++;
  };
}

/** Its knots lie within the limits; the picture goes on past them. */
function overField({ request, x, y }: FieldSpec, band: ColourBand): ColourBand {
  const stretched = (axis: Axis) => (axis.high - axis.low) / (withinLimit(axis, request).high - axis.low || 1);
  const [across, up] = [stretched(x), stretched(y)];
  return { at: (u, v) => band.at(u * across, v * up) };
}
