/** Works a field out in workers of a page, as the Desk does: lines coarse to fine, each handed to the worker that is free, then the draws of its band. */
import { defaultKit } from '../../src/core/pan/kit.ts';
import { prepareKit } from '../../src/core/pan/preparedKit.ts';
import { bandDraws, knotsDrawn } from '../../src/core/planning/field/band.ts';
import { createField, type Field, type FieldSpec, fieldLines } from '../../src/core/planning/field.ts';

export type FieldAsk =
  | { readonly kind: 'run'; readonly spec: FieldSpec; readonly workers: number }
  | { readonly kind: 'open'; readonly spec: FieldSpec }
  | { readonly kind: 'line'; readonly at: number }
  | { readonly kind: 'draw'; readonly number: number };

/** From asking to having it, ms: a worker started, the first line, an eighth of the lines, all, and the band. */
export interface FieldTimes {
  readonly opened: number;
  readonly first: number;
  readonly eighth: number;
  readonly all: number;
  readonly band: number;
}

let open: { readonly spec: FieldSpec; readonly field: Field } | undefined;
const prepared = prepareKit(defaultKit);

/** In a worker it answers at once; in a page `run` starts workers of the same script. */
export function fieldTimes(ask: FieldAsk): unknown {
  if (ask.kind === 'run') return run(ask.spec, ask.workers);
  if (ask.kind === 'open') {
    open = { spec: ask.spec, field: createField(ask.spec, prepared) };
    return open.field.sucroseKg;
  }
  if (!open) throw new Error('no field is open');
  if (ask.kind === 'line') return open.field.line(ask.at);
  return knotsDrawn(open.spec, prepared, open.field.sucroseKg, ask.number);
}

async function run(spec: FieldSpec, count: number): Promise<FieldTimes> {
  const begun = performance.now();
  const since = (): number => performance.now() - begun;
  const workers = Array.from({ length: count }, () => new Worker('/bench.js'));
  const asked = (worker: Worker, ask: FieldAsk): Promise<unknown> =>
    new Promise((done) => {
      worker.onmessage = ({ data }) => done(data);
      worker.postMessage(ask);
    });
  const open = workers.map((worker) => asked(worker, { kind: 'open', spec }));
  /** Hands the asks out, each to a worker that is free; the first that is open begins. */
  const shared = async (asks: readonly FieldAsk[], each: () => void): Promise<void> => {
    const queue = asks.values();
    await Promise.all(
      workers.map(async (worker, i) => {
        await open[i];
        for (const ask of queue) {
          await asked(worker, ask);
          each();
        }
      }),
    );
  };
  await Promise.race(open);
  const opened = since();
  const times: number[] = [];
  const lines = fieldLines(spec).map((at) => ({ kind: 'line', at }) as const);
  await shared(lines, () => times.push(since()));
  await shared(
    Array.from({ length: bandDraws }, (_, number) => ({ kind: 'draw', number }) as const),
    () => undefined,
  );
  const band = since();
  for (const worker of workers) worker.terminate();
  return {
    opened,
    first: times[0],
    eighth: times[Math.ceil(lines.length / 8) - 1],
    all: times[lines.length - 1],
    band,
  };
}
