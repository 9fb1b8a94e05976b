/** Work shared out among the cores: each runs the same module again in a worker, and judges its share of the seeds. */
import { availableParallelism } from 'node:os';
import { isMainThread, parentPort, Worker, workerData } from 'node:worker_threads';

/**
 * @param module address of the bench itself, which calls this at its top
 * @returns what was judged: of all seeds, or of those that were done when it was interrupted (Ctrl+C); in a worker nothing
 */
export async function sharedOut<Judged>(
  module: string,
  seeds: readonly number[],
  judge: (seed: number) => Judged,
): Promise<readonly Judged[] | undefined> {
  if (!isMainThread) {
    for (const seed of workerData as number[]) parentPort?.postMessage(judge(seed));
    return undefined;
  }
  const workers = Math.min(seeds.length, availableParallelism());
  const judged: Judged[] = [];
  await new Promise<void>((resolve, reject) => {
    process.once('SIGINT', resolve);
    for (let w = 0; w < workers; w++) {
      const worker = new Worker(new URL(module), { workerData: seeds.filter((_, i) => i % workers === w) });
      worker.on('error', reject);
      worker.on('message', (one: Judged) => {
        judged.push(one);
        console.error(`${judged.length} of ${seeds.length} judged`);
        if (judged.length === seeds.length) resolve();
      });
    }
  });
  return judged;
}
