/**
 * A kitchen full of devices: one cook, followed by many and written by two. How long from a reading being posted to every
 * follower having it, and whether the server's memory stays where it is. The built server runs as a process of its own.
 * `SECONDS=600` for the length that the bar is meant for.
 */
import { randomUUID } from 'node:crypto';
import { readFileSync } from 'node:fs';
import { cpus, loadavg } from 'node:os';
import { begunBody, sampleDevice } from '../test/sampleCook.ts';
import { publish, table } from './measure/report.ts';
import { served } from './measure/servedApp.ts';

const seconds = Number(process.env['SECONDS'] ?? 60);
const watching = 20;
const writing = 2;
const everyMs = 500;
const barMs = 150;

await served(({ address, pid }) => measure(address, pid));

async function measure(address: string, pid: number) {
  const send = await paired(address, 'cook');
  const cook = randomUUID();
  const begun = {
    ...sampleDevice(cook).make('begun', begunBody, 0),
    tDevice: new Date().toISOString(),
    clockOffsetMs: 0,
  };
  await send('api/cooks', JSON.stringify(begun), 'application/json');

  /** When a reading was posted, by what it shows. */
  const posted = new Map<number, number>();
  const delays: number[] = [];
  const leaving = new AbortController();
  for (let n = 0; n < watching; n++) {
    const { token } = await pair(address, 'reader');
    const headers = { authorization: `Bearer ${token}` };
    const answer = await fetch(`${address}api/cooks/${cook}/live`, { headers, signal: leaving.signal });
    void watch(answer, (raw) => {
      const at = posted.get(raw);
      if (at !== undefined) delays.push(performance.now() - at);
    });
  }
  const writers = await Promise.all(Array.from({ length: writing }, () => paired(address, 'probe')));
  const memory = [residentMb(pid)];
  const until = performance.now() + 1000 * seconds;
  let shown = 100;
  for (let turn = 0; performance.now() < until; turn++) {
    await Promise.all(
      writers.map(async (write, n) => {
        shown += 0.001;
        const raw = Number(shown.toFixed(3));
        posted.set(raw, performance.now());
        await write(`api/readings?unit=C&cook=${cook}&probe=probe-${n}`, String(raw), 'text/plain');
      }),
    );
    await new Promise((resolve) => setTimeout(resolve, everyMs));
    if (turn % 20 === 19) memory.push(residentMb(pid));
  }
  await new Promise((resolve) => setTimeout(resolve, 500));
  leaving.abort();
  report(delays, posted.size, memory);
}

function report(delays: readonly number[], readings: number, memory: readonly number[]) {
  const sorted = delays.toSorted((a, b) => a - b);
  const at = (share: number) =>
    (sorted[Math.min(sorted.length - 1, Math.floor(share * sorted.length))] ?? Number.NaN).toFixed(1);
  const p99 = Number(at(0.99));
  publish('devices', 'A kitchen full of devices', [
    `${watching} devices watch a cook and ${writing} write into it for ${seconds} s: ${readings} readings, seen ${delays.length} times.`,
    table(
      ['reading posted to seen, ms', 'median', '99th percentile', 'most', 'bar at the 99th'],
      [['', at(0.5), at(0.99), at(1), String(barMs)]],
    ),
    `Memory of the server over that time, MB: ${memory.map((mb) => mb.toFixed(0)).join(', ')}.`,
    `Load of the machine meanwhile (1 min): ${(loadavg()[0] ?? Number.NaN).toFixed(1)} on ${cpus().length} cores.`,
  ]);
  if (delays.length !== readings * watching) fail(`${readings * watching - delays.length} were not seen`);
  if (!(p99 <= barMs)) fail('slower than the bar');
}

function fail(why: string) {
  console.error(why);
  process.exitCode = 1;
}

async function watch(answer: Response, saw: (raw: number) => void) {
  let text = '';
  const decoder = new TextDecoder();
  try {
    for await (const piece of answer.body as ReadableStream<Uint8Array>) {
      text += decoder.decode(piece, { stream: true });
      const blocks = text.split('\n\n');
      text = blocks.pop() ?? '';
      for (const block of blocks) {
        const raw = /^event: logged$/m.test(block) ? /"raw":([\d.]+)/.exec(block)?.[1] : undefined;
        if (raw !== undefined) saw(Number(raw));
      }
    }
  } catch (error) {
    if (!(error instanceof DOMException)) throw error;
  }
}

async function pair(address: string, role: string): Promise<{ token: string }> {
  const post = (path: string, body: object) =>
    fetch(address + path, {
      method: 'POST',
      headers: { 'content-type': 'application/json' },
      body: JSON.stringify(body),
    });
  const { code } = (await (await post('api/invitations', { role })).json()) as { code: string };
  return (await (await post('api/pairing', { code, name: role })).json()) as { token: string };
}

async function paired(address: string, role: string) {
  const { token } = await pair(address, role);
  return async (path: string, body: string, type: string) => {
    const headers = { authorization: `Bearer ${token}`, 'content-type': type };
    const answer = await fetch(address + path, { method: 'POST', headers, body });
    if (!answer.ok) throw new Error(await answer.text());
  };
}

/** Linux alone tells it without help. */
function residentMb(pid: number): number {
  try {
    return Number(/VmRSS:\s+(\d+)/.exec(readFileSync(`/proc/${pid}/status`, 'utf8'))?.[1]) / 1024;
  } catch {
    return Number.NaN;
  }
}
