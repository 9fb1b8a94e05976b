/**
 * The same work done by something plainer: one observation taken in by an ensemble filter in NumPy, and events kept by appending lines
 * to a file. (Solvers of the equations are in `simulate`.)
 */
import { spawnSync } from 'node:child_process';
import { randomUUID } from 'node:crypto';
import { closeSync, fsyncSync, mkdtempSync, openSync, rmSync, writeSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { defaultKit } from '../src/core/pan/kit.ts';
import { normalNumbers } from '../src/core/reactions/normal.ts';
import { assimilate } from '../src/core/twin/assimilate.ts';
import { createVariables } from '../src/core/twin/variables.ts';
import { buildServer } from '../src/server/server.ts';
import { openStore } from '../src/server/store/store.ts';
import { begunBody, sampleBodies, sampleDevice } from '../test/sampleCook.ts';
import { ms, publish, ratio, table } from './measure/report.ts';
import { type Timing, timed } from './measure/timing.ts';

const members = 256;
const appended = 300;

const timingOf = (times: readonly number[]): Timing => {
  const sorted = times.toSorted((a, b) => a - b);
  return { medianMs: sorted[sorted.length >> 1], leastMs: sorted[0] };
};

/** An ensemble in which what is expected hangs on the first of the coordinates, as a temperature does. */
function problem() {
  const { count } = createVariables(defaultKit);
  const normal = normalNumbers(7);
  const ensemble = Float64Array.from({ length: members * count }, () => normal());
  const expected = Float64Array.from(
    { length: members },
    (_, i) => 130 + ensemble[i * count] + 0.3 * ensemble[i * count + 1],
  );
  const reach = new Float64Array(count).fill(1);
  return { ensemble, coordinates: count, expected, observed: 131, variance: 0.16, reach, relaxation: 0.25 };
}

async function filters(): Promise<string> {
  const given = problem();
  const { coordinates, observed, variance, relaxation } = given;
  const taken = { ...given, ensemble: given.ensemble.slice() };
  const ours = await timed(() => {
    taken.ensemble.set(given.ensemble);
    assimilate(taken);
  });
  const script = join(process.cwd(), 'bench', 'solvers', 'filter.py');
  const [ensemble, expected, reach] = [given.ensemble, given.expected, given.reach].map((each) => [...each]);
  const input = JSON.stringify({ ensemble, expected, reach, members, observed, variance, relaxation, times: 300 });
  const { status, stdout } = spawnSync('python3', [script], { input, encoding: 'utf8', maxBuffer: 1e8 });
  if (status !== 0) return 'Not compared with NumPy: it is not on this machine.';
  const theirs = JSON.parse(stdout) as { ensemble: number[]; times: number[]; version: string };
  const apart = Math.max(...theirs.ensemble.map((value, i) => Math.abs(value - taken.ensemble[i])));
  const plain = timingOf(theirs.times);
  return `One observation corrects ${members} members of ${coordinates} coordinates, all within its reach; the two agree within ${apart.toExponential(0)}.\n\n${table(
    ['filter', 'ms', 'ratio'],
    [
      ['ours', ms(ours), '1'],
      [`NumPy ${theirs.version}, over whole arrays`, ms(plain), ratio(plain.leastMs / ours.leastMs)],
    ],
  )}`;
}

async function stores(): Promise<string> {
  const folder = mkdtempSync(join(tmpdir(), 'umberpan-bench-'));
  try {
    const store = await openStore(folder);
    const app = await buildServer({ store, pages: folder });
    const cook = randomUUID();
    const phone = sampleDevice(cook);
    const post = async (url: string, event: object) => {
      const now = { tDevice: new Date().toISOString(), clockOffsetMs: 0 };
      const answer = await app.inject({
        method: 'POST',
        url,
        payload: { ...event, ...now },
        remoteAddress: '127.0.0.1',
      });
      if (answer.statusCode >= 300) throw new Error(answer.body);
    };
    await post('/api/cooks', phone.make('begun', begunBody, 0));
    const ours: number[] = [];
    for (let n = 1; n <= appended; n++) {
      const event = phone.make('reading', sampleBodies.reading, n);
      const begun = performance.now();
      await post(`/api/cooks/${cook}/events`, event);
      ours.push(performance.now() - begun);
    }
    await app.close();
    await store.close();
    const file = openSync(join(folder, 'naive.ndjson'), 'a');
    const theirs: number[] = [];
    for (let n = 1; n <= appended; n++) {
      const event = phone.make('reading', sampleBodies.reading, n);
      const begun = performance.now();
      writeSync(file, `${JSON.stringify(event)}\n`);
      fsyncSync(file);
      theirs.push(performance.now() - begun);
    }
    closeSync(file);
    const [whole, naive] = [timingOf(ours), timingOf(theirs)];
    return `${appended} readings, one after the other, each on the disk before the next. Ours: the whole way through the server's route, validated, linked in its chain and committed.\n\n${table(
      ['store', 'ms an event', 'ratio'],
      [
        ['a line appended to a file, and fsync', ms(naive), '1'],
        ['ours', ms(whole), ratio(whole.leastMs / naive.leastMs)],
      ],
    )}`;
  } finally {
    rmSync(folder, { recursive: true });
  }
}

publish('peers', 'Peers', ['## The twin’s filter', await filters(), '## The store', await stores()]);
