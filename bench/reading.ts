/**
 * Time of one reading taken in by the twin and of a forecast of ten minutes with bands: in Node, and in Chromium on a thread slowed
 * down four times, which stands for a phone.
 */
import { loadavg } from 'node:os';
import { join } from 'node:path';
import { slowed } from './measure/inChromium.ts';
import { meanOf, type ReadingRun, type ReadingTimes, readingTimes } from './measure/readingRun.ts';
import { publish, table } from './measure/report.ts';

/** The bar of the design: a reading and a forecast, slowed down. */
const barMs = 50;
const rate = 4;
const minutes = Number(process.env['MINUTES'] ?? 70);
const runs: readonly ReadingRun[] = [
  { members: 256, carried: 256, minutes, repeats: 3 },
  { members: 256, carried: 64, minutes, repeats: 3 },
  { members: 256, carried: 32, minutes, repeats: 3 },
  { members: 128, carried: 128, minutes, repeats: 3 },
  { members: 128, carried: 32, minutes, repeats: 3 },
];

const at = (values: readonly number[], share: number): number =>
  [...values].sort((a, b) => a - b)[Math.round(share * (values.length - 1))];
const cell = (values: readonly number[]): string => `${meanOf(values).toFixed(1)} (${at(values, 0.9).toFixed(1)})`;

function row({ members, carried }: ReadingRun, { readingMs, forecastMs }: ReadingTimes, slower = 1): string[] {
  const both = slower * (meanOf(readingMs) + meanOf(forecastMs));
  const kept = both <= barMs ? 'kept' : 'missed';
  return [String(members), String(carried), cell(readingMs), cell(forecastMs), `${both.toFixed(0)}, ${kept}`];
}

const head = (both: string) => ['members', 'carried in the forecast', 'a reading, ms', 'a forecast, ms', both];
const sections = [
  `The first ${minutes} minutes of a hidden cook, a reading each 10 s, a forecast each 4 minutes: 10 minutes on, a row a minute, with 10-90 % bands of temperature, water, inversion, pH and colour, the ring as it stands. Given are the mean over the cook, of the quickest of ${runs[0].repeats} times through it, and the 90 % mark. The bar: a reading and a forecast with 256 members in ${barMs} ms, slowed down ${rate} times.`,
  `## Node, not slowed\n\n${table(
    head(`both, x ${rate}, ms`),
    runs.map((run) => row(run, readingTimes(run), rate)),
  )}`,
];

const module = join(process.cwd(), 'bench', 'measure', 'readingRun.ts');
const found = await slowed(module, 'readingTimes', rate, async ({ version, inPage, inWorker }) => {
  const slow: string[][] = [];
  for (const run of runs) slow.push(row(run, await inPage(run)));
  const beside: string[][] = [];
  for (const run of runs) beside.push(row(run, await inWorker(run), rate));
  sections.push(
    `## Chromium ${version}, slowed down ${rate} times\n\nChromium slows down the main thread of a page, and refuses to for a worker; so the same code was measured on the main thread.\n\n${table(head('both, ms'), slow)}`,
    `In a worker, not slowed:\n\n${table(head(`both, x ${rate}, ms`), beside)}`,
  );
});
if (!found) sections.push('No Chromium was found.');
sections.push(
  `When it ended, ${loadavg()[0].toFixed(1)} processes wanted the machine's cores: on a busy machine these times are too long.`,
);
publish('reading', 'A reading and a forecast', sections);
