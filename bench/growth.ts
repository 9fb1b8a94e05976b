/** How times grow: with the twin's members, the readings in a log, and the cooks in the Book. As a table and as a picture. */
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { BookEntry } from '../src/api/book.ts';
import { readCookFile } from '../src/core/log/cookFile.ts';
import { foldCook } from '../src/core/log/fold.ts';
import { buildServer } from '../src/server/server.ts';
import { sha256 } from '../src/server/sha256.ts';
import { openStore } from '../src/server/store/store.ts';
import { cookWith } from './measure/importedCook.ts';
import { exponentOf, type Panel, plotted } from './measure/plot.ts';
import { meanOf, readingTimes } from './measure/readingRun.ts';
import { publish, table } from './measure/report.ts';
import { timed } from './measure/timing.ts';

const remoteAddress = '127.0.0.1';

function members(): Panel {
  const points = [32, 64, 128, 256, 512].map((size) => {
    const { readingMs } = readingTimes({ members: size, carried: 16, minutes: 40, repeats: 2 });
    return { size, ms: meanOf(readingMs) };
  });
  return { title: 'A reading taken in, ms', across: 'members of the twin', points };
}

async function readings(): Promise<Panel> {
  const points: { size: number; ms: number }[] = [];
  for (const size of [1000, 2000, 4000, 8000, 16_000]) {
    const file = readCookFile(cookWith(size), sha256);
    if (file.kind === 'refused') throw new Error(file.reason);
    points.push({ size, ms: (await timed(() => foldCook(file.events), 1)).leastMs });
  }
  return { title: 'A log folded to its state, ms', across: 'readings in the log', points };
}

/** Each with few readings: the list shows summaries, which are made once. */
async function cooks(): Promise<Panel> {
  const folder = mkdtempSync(join(tmpdir(), 'umberpan-bench-'));
  const points: { size: number; ms: number }[] = [];
  try {
    const store = await openStore(folder);
    const app = await buildServer({ store, pages: folder });
    const list = async () => {
      await app.inject({ url: '/api/book?limit=1000', remoteAddress, headers: { 'accept-encoding': 'gzip, br' } });
    };
    const headers = { 'content-type': 'application/x-ndjson' };
    let there = 0;
    for (const size of [25, 50, 100, 200, 400, 800]) {
      for (; there < size; there++)
        await app.inject({ method: 'POST', url: '/api/cooks/import', payload: cookWith(60), headers, remoteAddress });
      while (
        (await app.inject({ url: '/api/book?limit=1000', remoteAddress }))
          .json<{ entries: BookEntry[] }>()
          .entries.some(({ due }) => due)
      )
        await new Promise((resolve) => setTimeout(resolve, 500));
      points.push({ size, ms: (await timed(list, 1)).leastMs });
    }
    await app.close();
    await store.close();
  } finally {
    rmSync(folder, { recursive: true });
  }
  return { title: 'The list of the Book, ms', across: 'cooks in the store', points };
}

const panels = [members(), await readings(), await cooks()];
writeFileSync(join(process.cwd(), 'bench', 'results', 'growth.svg'), plotted(panels));
publish('growth', 'Growth', [
  'Least of many runs; of a reading, the mean over 40 minutes of a hidden cook, of the quicker of two. The exponent is the power of the size that the times follow: 1 is as much more time as there is more to do.',
  '![Times over sizes on logarithmic axes](growth.svg)',
  table(
    ['what', 'over', 'ms at each size', 'exponent'],
    panels.map((panel) => [
      panel.title.replace(', ms', ''),
      panel.across,
      panel.points.map(({ size, ms }) => `${size}: ${ms.toPrecision(3)}`).join(', '),
      exponentOf(panel).toFixed(2),
    ]),
  ),
]);
