/**
 * A kitchen full of devices: a cook of which half an hour has passed goes on, followed by many and written by two thermometers. How
 * long from a reading being posted to every follower having it, and to the advice made with it being on the page of one of them, a real
 * one in Chromium; and whether the server's memory stays where it is. The built server runs as a process of its own, all on one machine.
 * `SECONDS=600` for the length that the bar is meant for.
 */
import { randomUUID } from 'node:crypto';
import { readFileSync } from 'node:fs';
import { cpus, loadavg } from 'node:os';
import { setTimeout as sleep } from 'node:timers/promises';
import { chromium, type Page } from 'playwright-core';
import { findChromium } from '../scripts/setup/chromium.mjs';
import type { SimulatedLog } from '../src/core/book/simulatedLog.ts';
import { defaultKit } from '../src/core/pan/kit.ts';
import { cookedLog } from '../test/cookedLog.ts';
import { startMs } from '../test/sampleCook.ts';
import { publish, table } from './measure/report.ts';
import { served } from './measure/servedApp.ts';

const seconds = Number(process.env['SECONDS'] ?? 60);
/** Beside the one in Chromium. */
const watching = 19;
const everyMs = 1000;
/** The second thermometer sends between two readings of the first. */
const secondAfterMs = 500;
const passedS = 30 * 60;
const settleMs = 5000;
const barMs = 150;

const executablePath = findChromium();
if (!executablePath) throw new Error('there is no Chromium');
const browser = await chromium.launch({ executablePath, args: ['--no-sandbox', '--disable-gpu'] });
await served(({ address, pid }) => measure(address, pid)).finally(() => browser.close());

async function measure(address: string, pid: number) {
  const { cook, simulated, due, agoMs } = await begun(address);
  const posted = new Map<number, number>();
  const delays: number[] = [];
  const leaving = new AbortController();
  for (let n = 0; n < watching; n++) {
    const { token } = await pair(address, { role: 'reader', cook });
    const headers = { authorization: `Bearer ${token}` };
    const answer = await fetch(`${address}api/cooks/${cook}/live`, { headers, signal: leaving.signal });
    void watch(answer, (raw) => {
      const at = posted.get(raw);
      if (at !== undefined) delays.push(Date.now() - at);
    });
  }
  const page = await watchedPage(address, cook);
  const [first, second] = [await thermometer(address, cook, 'pan'), await thermometer(address, cook, 'second')];
  const send = await writer(address, 'cook');
  // The page's twin goes through the half hour first.
  await sleep(settleMs);

  const memory = [residentMb(pid)];
  const shown: { readonly text: string; readonly atMs: number }[] = [];
  const { course } = simulated;
  const until = Date.now() + 1000 * seconds;
  for (let turn = 0; Date.now() < until; turn++) {
    const begunMs = Date.now();
    const timeS = Math.min(course.timeS.length - 1, Math.floor((begunMs - startMs - agoMs) / 1000));
    for (; due.length > 0 && Date.parse(due[0].tDevice) <= startMs + 1000 * timeS; due.shift()) {
      await send(`api/cooks/${cook}/events`, JSON.stringify(asOfNow(due[0], agoMs)), 'application/json');
    }
    // Tenths that differ from one reading to the next, so that the page shows which it goes by; below them a number of its own.
    const tenths = Math.round(10 * course.readingC[timeS]);
    const valueC = (tenths + ((turn - tenths) % 2 === 0 ? 0 : 1)) / 10 + (turn % 1000) * 1e-5;
    const raw = Number(valueC.toFixed(5));
    posted.set(raw, Date.now());
    shown.push({ text: `Thermometer: ${raw.toFixed(1)}`, atMs: Date.now() });
    await first(raw);
    await sleep(Math.max(0, begunMs + secondAfterMs - Date.now()));
    // Another number, so that it is not taken for the first one's; the page shows the same.
    await second(raw + 1e-6);
    await sleep(Math.max(0, begunMs + everyMs - Date.now()));
    if (turn % 10 === 9) memory.push(residentMb(pid));
  }
  await sleep(1000);
  leaving.abort();
  const seen = await page.evaluate(() => (window as unknown as Watched).seen);
  report({ delays, readings: shown.length, advised: advisedAfter(shown, seen), memory });
}

/** A cook on a hidden pan that is simulated, its first half hour in the log, and what of it is still to be noted. */
async function begun(address: string) {
  const cook = randomUUID();
  const simulated = cookedLog(defaultKit, 4, 'live', cook);
  const agoMs = Date.now() - startMs - 1000 * passedS;
  const isOver = ({ tDevice }: SimulatedLog['events'][number]) => Date.parse(tDevice) <= startMs + 1000 * passedS;
  const [beginning, ...past] = simulated.events.filter(isOver).map((event) => asOfNow(event, agoMs));
  const send = await writer(address, 'cook');
  await send('api/cooks', JSON.stringify(beginning), 'application/json');
  await send(`api/cooks/${cook}/events`, JSON.stringify(past), 'application/json');
  const due = simulated.events.filter((event) => !isOver(event) && event.kind !== 'reading');
  return { cook, simulated, due, agoMs };
}

function asOfNow(event: SimulatedLog['events'][number], agoMs: number) {
  return { ...event, tDevice: new Date(Date.parse(event.tDevice) + agoMs).toISOString(), clockOffsetMs: 0 };
}

interface Watched {
  seen: { readonly text: string; readonly atMs: number }[];
}

/** The cook's page, which notes when it says which reading. Advice and reading are told to it together. */
async function watchedPage(address: string, cook: string): Promise<Page> {
  const { token } = await pair(address, { role: 'reader', cook });
  const context = await browser.newContext({ viewport: { width: 360, height: 780 } });
  await context.addInitScript((pass) => localStorage.setItem('umberpan.pass', pass), token);
  const page = await context.newPage();
  await page.goto(`${address}stove/cook/${cook}`);
  await page.locator('.glance-detail', { hasText: 'Thermometer' }).waitFor();
  await page.evaluate(() => {
    const watched = window as unknown as Watched;
    watched.seen = [];
    const look = () => {
      const text = /Thermometer: [\d.]+/.exec(document.querySelector('.glance-detail')?.textContent ?? '')?.[0] ?? '';
      if (text !== watched.seen.at(-1)?.text) watched.seen.push({ text, atMs: Date.now() });
    };
    new MutationObserver(look).observe(document.body, { subtree: true, childList: true, characterData: true });
  });
  return page;
}

/** How long until the page said each reading, ms; Infinity for one that it never said before the next was sent. */
function advisedAfter(shown: Watched['seen'], seen: Watched['seen']): number[] {
  return shown.map(({ text, atMs }, at) => {
    const nextMs = shown[at + 1]?.atMs ?? Number.POSITIVE_INFINITY;
    const said = seen.find((each) => each.text === text && each.atMs >= atMs && each.atMs < nextMs);
    return said ? said.atMs - atMs : Number.POSITIVE_INFINITY;
  });
}

interface Measured {
  readonly delays: readonly number[];
  readonly readings: number;
  readonly advised: readonly number[];
  readonly memory: readonly number[];
}

function report({ delays, readings, advised, memory }: Measured) {
  const at = (times: readonly number[], share: number) =>
    times.toSorted((a, b) => a - b)[Math.min(times.length - 1, Math.floor(share * times.length))] ?? Number.NaN;
  const row = (what: string, times: readonly number[]) => [
    what,
    ...[0.5, 0.99, 1].map((share) => String(at(times, share))),
  ];
  publish('devices', 'A kitchen full of devices', [
    `${watching + 1} devices watch a cook on a simulated pan and 2 thermometers write into it for ${seconds} s, one of them measured: ${readings} readings. One of the devices is a page in Chromium, with its twin of 128 members; of the others each has what the server sends.`,
    table(
      ['from a reading being posted, ms', 'median', '99th percentile', 'most'],
      [row(`until ${watching} devices have it`, delays), row('until its advice is on the page', advised)],
    ),
    `The bar: the advice is seen within ${barMs} ms, at the 99th percentile.`,
    `Memory of the server over that time, MB: ${memory.map((mb) => mb.toFixed(0)).join(', ')}.`,
    `Load of the machine meanwhile (1 min): ${(loadavg()[0] ?? Number.NaN).toFixed(1)} on ${cpus().length} cores, which server, devices and page share.`,
  ]);
  if (delays.length !== readings * watching) fail(`${readings * watching - delays.length} were not seen`);
  if (!(at(advised, 0.99) <= barMs)) fail('slower than the bar');
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

interface Terms {
  readonly role: string;
  readonly cook?: string;
}

async function pair(address: string, terms: Terms): Promise<{ token: string }> {
  const post = (path: string, body: object) =>
    fetch(address + path, {
      method: 'POST',
      headers: { 'content-type': 'application/json' },
      body: JSON.stringify(body),
    });
  const { code } = (await (await post('api/invitations', terms)).json()) as { code: string };
  return (await (await post('api/pairing', { code, name: terms.role })).json()) as { token: string };
}

async function writer(address: string, role: string, cook?: string) {
  const { token } = await pair(address, { role, ...(cook && { cook }) });
  return async (path: string, body: string, type: string) => {
    const headers = { authorization: `Bearer ${token}`, 'content-type': type };
    const answer = await fetch(address + path, { method: 'POST', headers, body });
    if (!answer.ok) throw new Error(await answer.text());
  };
}

async function thermometer(address: string, cook: string, probe: string) {
  const write = await writer(address, 'probe', cook);
  return (raw: number) => write(`api/readings?unit=C&probe=${probe}`, String(raw), 'text/plain');
}

/** Linux alone tells it without help. */
function residentMb(pid: number): number {
  try {
    return Number(/VmRSS:\s+(\d+)/.exec(readFileSync(`/proc/${pid}/status`, 'utf8'))?.[1]) / 1024;
  } catch {
    return Number.NaN;
  }
}
