/**
 * Time to take in the files of a year's cooks through the server's own route, on a fresh store on this disk, and what each part of it
 * costs alone; then the longest that a proof of a backup holds the server up. `READINGS=100000` for a shorter run.
 */
import { mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { monitorEventLoopDelay } from 'node:perf_hooks';
import { faultsOfFiled } from '../src/api/filedEvent.ts';
import { isCanonical } from '../src/core/log/canonicalJson.ts';
import { readCookFile } from '../src/core/log/cookFile.ts';
import { chainStart, linkHash } from '../src/core/log/hashChain.ts';
import { buildServer } from '../src/server/server.ts';
import { sha256 } from '../src/server/sha256.ts';
import { proveCopy } from '../src/server/store/proveCopy.ts';
import { openStore } from '../src/server/store/store.ts';
import { cookWith } from './measure/importedCook.ts';
import { publish, ratio, table } from './measure/report.ts';

const readings = Number(process.env['READINGS'] ?? 1_000_000);
const inOneCook = 10_000;
const barMs = 10_000;
const million = 1e6;

/** Wall and processor time, ms. On a machine that does other work the processor's is the steadier. */
interface Spent {
  readonly wallMs: number;
  readonly cpuMs: number;
}

async function spent(work: () => unknown): Promise<Spent> {
  const [begun, cpu] = [performance.now(), process.cpuUsage()];
  await work();
  const { user, system } = process.cpuUsage(cpu);
  return { wallMs: performance.now() - begun, cpuMs: (user + system) / 1000 };
}

const sum = (all: readonly Spent[]): Spent =>
  all.reduce((a, b) => ({ wallMs: a.wallMs + b.wallMs, cpuMs: a.cpuMs + b.cpuMs }));
const row = (what: string, { wallMs, cpuMs }: Spent, of: number): string[] => [
  what,
  ((wallMs * million) / of).toFixed(0),
  ((cpuMs * million) / of).toFixed(0),
];

/** What a file costs on its way in, part by part, each alone; of several times the quickest. */
async function parts(): Promise<string[][]> {
  const text = cookWith(inOneCook);
  const lines = text.split('\n').slice(1, -1);
  const values = lines.map((line) => JSON.parse(line) as object);
  const file = readCookFile(text, sha256);
  if (file.kind === 'refused') throw new Error(file.reason);
  const { events, contents } = file;
  const tServer = '2031-05-09T18:30:00.000Z';
  const works: Readonly<Record<string, () => unknown>> = {
    'reading the file, with all its checks': () => readCookFile(text, sha256),
    'of which JSON.parse': () => lines.map((line) => JSON.parse(line)),
    'of which proving the canonical form': () => lines.every((line, place) => isCanonical(line, values[place])),
    'of which SHA-256 of the file': () => sha256(text),
    'checking what the events say (zod)': () => events.every((event) => faultsOfFiled(event).length === 0),
    'linking the chain (SHA-256)': () =>
      contents.reduce((prevHash, content) => linkHash({ content, tServer, prevHash }, sha256), chainStart),
  };
  const rows: string[][] = [];
  for (const [what, work] of Object.entries(works)) {
    let best: Spent | undefined;
    for (let time = 0; time < 20; time++) {
      const one = await spent(work);
      if (!best || one.cpuMs < best.cpuMs) best = one;
    }
    rows.push(row(what, best as Spent, inOneCook));
  }
  return rows;
}

const folder = mkdtempSync(join(tmpdir(), 'umberpan-bench-'));
try {
  const files = Array.from({ length: readings / inOneCook }, (_, place) => join(folder, `${place}.ndjson`));
  // Made beforehand, so that nothing of the making is still to be cleared away while they are taken in.
  for (const file of files) writeFileSync(file, cookWith(inOneCook));
  const store = await openStore(folder);
  const app = await buildServer({ store, pages: folder });
  const times: Spent[] = [];
  for (const file of files) {
    const payload = readFileSync(file, 'utf8');
    const headers = { 'content-type': 'application/x-ndjson' };
    times.push(
      await spent(async () => {
        const answer = await app.inject({ method: 'POST', url: '/api/cooks/import', payload, headers });
        if (answer.statusCode !== 200) throw new Error(answer.body);
      }),
    );
  }
  const backup = await spent(() => store.backUp('bench', new Date()));
  await app.close();
  await store.close();
  const [copy] = readdirSync(join(folder, 'backups'));
  const delay = monitorEventLoopDelay({ resolution: 1 });
  delay.enable();
  const proof = await spent(() => proveCopy(join(folder, 'backups', copy)));
  delay.disable();

  const all = sum(times);
  const tenth = Math.max(1, Math.floor(times.length / 10));
  const [first, last] = [sum(times.slice(0, tenth)), sum(times.slice(-tenth))];
  const head = ['a million readings', 'wall, ms', 'processor, ms'];
  publish('store', 'The store', [
    `${times.length} files of ${inOneCook} readings, taken in one after the other through \`/api/cooks/import\` into a fresh store: validated, linked, all or nothing, on the disk before the answer. Given for a million readings. The bar: ${barMs} ms.`,
    table(head, [
      row('taken in', all, readings),
      [
        'times the bar',
        ratio((all.wallMs * million) / readings / barMs),
        ratio((all.cpuMs * million) / readings / barMs),
      ],
      ['last tenth of the files, times the first', ratio(last.wallMs / first.wallMs), ratio(last.cpuMs / first.cpuMs)],
    ]),
    `## Parts, each alone\n\nThe quickest of 20 times; the rest of the whole is SQLite, and clearing memory, which a part alone does not show.\n\n${table(head, await parts())}`,
    `## A backup of it\n\n${table(head, [row('copied and proved', backup, readings), row('of which the proof', proof, readings)])}\n\nLongest that the proof held up the server: ${(delay.max / 1e6).toFixed(0)} ms (99 %: ${(delay.percentile(99) / 1e6).toFixed(0)} ms).`,
  ]);
} finally {
  rmSync(folder, { recursive: true });
}
