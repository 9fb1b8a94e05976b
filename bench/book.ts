/**
 * A year of cooks in the Book: 200 cooks with 2 million readings in one store, and how long the server takes to answer each of its pages.
 * `COOKS=20 npm run bench book` for a shorter run.
 */
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { BookEntry } from '../src/api/book.ts';
import { buildServer } from '../src/server/server.ts';
import { openStore } from '../src/server/store/store.ts';
import { workspaceText } from '../src/server/store/workspace.ts';
import { cookWith } from './measure/importedCook.ts';
import { publish, table } from './measure/report.ts';

const cooks = Number(process.env['COOKS'] ?? 200);
const readings = 10_000;
const barMs = 300;
const times = 15;
const remoteAddress = '127.0.0.1';

type App = Awaited<ReturnType<typeof buildServer>>;

async function asked(app: App, url: string) {
  const begun = performance.now();
  const answer = await app.inject({ url, remoteAddress, headers: { 'accept-encoding': 'gzip, br' } });
  const ms = performance.now() - begun;
  if (answer.statusCode !== 200) throw new Error(`${url}: ${answer.body}`);
  return { ms, bytes: answer.rawPayload.length };
}

async function measured(app: App, what: string, url: string): Promise<string[]> {
  await asked(app, url);
  const all: number[] = [];
  let bytes = 0;
  for (let time = 0; time < times; time++) {
    const one = await asked(app, url);
    all.push(one.ms);
    bytes = one.bytes;
  }
  all.sort((a, b) => a - b);
  const [median, most] = [all[times >> 1], all[times - 1]];
  return [what, median.toFixed(0), most.toFixed(0), (bytes / 1000).toFixed(0), median < barMs ? 'kept' : 'missed'];
}

const folder = mkdtempSync(join(tmpdir(), 'umberpan-bench-'));
try {
  const store = await openStore(folder);
  const app = await buildServer({ store, pages: folder });
  let id = '';
  for (let number = 0; number < cooks; number++) {
    const payload = cookWith(readings);
    const headers = { 'content-type': 'application/x-ndjson' };
    const answer = await app.inject({ method: 'POST', url: '/api/cooks/import', payload, headers, remoteAddress });
    if (answer.statusCode !== 200) throw new Error(answer.body);
    id = answer.json<{ cook: string }>().cook;
  }
  const begun = performance.now();
  const whileMade: number[] = [];
  for (let left = cooks; left > 0; ) {
    const answerBegun = performance.now();
    const answer = await app.inject({ url: '/api/book?limit=1000', remoteAddress });
    whileMade.push(performance.now() - answerBegun);
    left = answer.json<{ entries: BookEntry[] }>().entries.filter(({ due }) => due).length;
    await new Promise((resolve) => setTimeout(resolve, 2000));
  }
  const madeS = (performance.now() - begun) / 1000;
  whileMade.sort((x, y) => x - y);

  const rows = [
    await measured(app, `the list of ${cooks} cooks`, '/api/book?limit=1000'),
    await measured(app, 'a log, in the parts that the page asks for', `/api/cooks/${id}/events?limit=2500`),
    await measured(app, 'the file of a cook (a download)', `/api/cooks/${id}/file`),
    await measured(app, 'lots, for the links', '/api/lots?limit=500'),
  ];
  const exportBegun = performance.now();
  let exported = 0;
  for await (const piece of workspaceText(store.db)) exported += piece.length;
  const exportS = (performance.now() - exportBegun) / 1000;
  await app.close();
  await store.close();
  publish('book', 'The Book', [
    `${cooks} cooks of ${readings} readings (one a second), ${(cooks * readings) / 1e6} million in all, in one store. Answers through the server's own routes, compressed, without a socket: median and longest of ${times}. The bar: ${barMs} ms.`,
    table(['what is asked', 'median, ms', 'longest, ms', 'compressed, kB', 'bar'], rows),
    `Summaries are made once after the import, by the twin: ${(madeS / cooks).toFixed(1)} s a cook, in slices between answers. Meanwhile the list took ${whileMade[whileMade.length >> 1].toFixed(0)} ms (median) and ${(whileMade.at(-1) ?? 0).toFixed(0)} ms (longest).`,
    `The whole workspace as one file: ${(exported / 1e6).toFixed(0)} MB in ${exportS.toFixed(0)} s.`,
  ]);
} finally {
  rmSync(folder, { recursive: true });
}
