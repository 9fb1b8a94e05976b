/** How long it takes to learn from one cook of two hours with a reading each second: in Node, and in a worker of Chromium. */
import { randomUUID } from 'node:crypto';
import { loadavg } from 'node:os';
import { join } from 'node:path';
import { simulatedLog } from '../src/core/book/simulatedLog.ts';
import type { LogEvent } from '../src/core/log/event.ts';
import { defaultKit } from '../src/core/pan/kit.ts';
import { defaultRequest } from '../src/core/planning/request.ts';
import { normalNumbers } from '../src/core/reactions/normal.ts';
import { sampleDevice } from '../test/sampleCook.ts';
import { slowed } from './measure/inChromium.ts';
import { type LessonTime, lessonTime } from './measure/lessonRun.ts';
import { publish, table } from './measure/report.ts';

const barMs = 10_000;
const seeds = [1, 2, 3, 4, 5];
const noiseC = 0.4;
const request = { ...defaultRequest, invertMinutes: 45, brownMinutes: 40 };

/** The log of a hidden cook, with readings each second in place of its own. */
function cookEachSecond(seed: number): { readonly events: readonly LogEvent[]; readonly minutes: number } {
  const device = sampleDevice(randomUUID());
  const notes: { readonly atS: number; readonly note: (phone: typeof device) => LogEvent }[] = [];
  const { course, lastS } = simulatedLog(
    { request, kit: defaultKit, mode: 'live', planId: null, seed },
    (kind, body, atS) => {
      if (kind !== 'reading') notes.push({ atS, note: (phone) => phone.make(kind, body, atS) });
      return device.make(kind, body, atS);
    },
  );
  const noise = normalNumbers(seed * 17 + 1);
  for (let atS = 1; atS <= lastS; atS++) {
    const valueC = course.readingC[atS] + noiseC * noise();
    const reading = { probe: 'pan', valueC, quality: 'fresh', unit: 'Cel', raw: valueC } as const;
    notes.push({ atS, note: (phone) => phone.make('reading', reading, atS) });
  }
  // A device notes in the order of time.
  const phone = sampleDevice(randomUUID());
  return { events: notes.toSorted((a, b) => a.atS - b.atS).map(({ note }) => note(phone)), minutes: lastS / 60 };
}

const cooks = seeds.map(cookEachSecond);
const seconds = ({ ended, ms }: LessonTime): string => (ended === 'learned' ? (ms / 1000).toFixed(1) : ended);
const inNode = cooks.map(({ events }) => lessonTime({ events, kit: defaultKit }));
const inWorkers: LessonTime[] = [];
const module = join(process.cwd(), 'bench', 'measure', 'lessonRun.ts');
const ran = await slowed(module, lessonTime.name, 1, async ({ inWorker }) => {
  for (const { events } of cooks) inWorkers.push(await inWorker({ events, kit: defaultKit }));
});
const longest = Math.max(...inWorkers.map(({ ended, ms }) => (ended === 'learned' ? ms : Number.POSITIVE_INFINITY)));
const verdict = ran
  ? ` The longest in a worker: ${(longest / 1000).toFixed(1)} s, ${longest <= barMs ? 'kept' : 'missed'}.`
  : '';
publish('lesson', 'A lesson', [
  `Cooks of about two hours on hidden pans, with a reading each second and ${noiseC} C of noise, learned by a kit that knows nothing yet. The bar: ${barMs / 1000} s in a worker of the page.${verdict}`,
  table(
    ['cook', 'minutes', 'readings', 'in Node, s', 'in a worker of Chromium, s'],
    cooks.map(({ events, minutes }, i) => [
      String(seeds[i]),
      minutes.toFixed(0),
      String(events.filter(({ kind }) => kind === 'reading').length),
      seconds(inNode[i]),
      inWorkers[i] ? seconds(inWorkers[i]) : '',
    ]),
  ),
  `When it ended, ${loadavg()[0].toFixed(1)} processes wanted the machine's cores: on a busy machine these times are too long.`,
]);
