/**
 * Time of a reading that comes late into the log of two hours, of which a thermometer that sends each second is heard every five: the
 * twin goes back to before it and does the rest again (EVT-3; the bar is 2 s for the whole log).
 */
import { createFollowed } from '../src/core/advice/followed.ts';
import type { TwinEvent } from '../src/core/twin/twin.ts';
import { hiddenCook } from './measure/hiddenCook.ts';
import { referenceCook } from './measure/referenceCook.ts';
import { publish, table } from './measure/report.ts';

const everyS = 5;
const cook = referenceCook();
const { course, told } = hiddenCook(cook, 1);
const lastS = Math.min(7200, course.timeS.length - 1);

const reading = (timeS: number): TwinEvent => ({
  timeS,
  observation: { kind: 'reading', valueC: course.readingC[timeS], byHand: false },
});
const inTime = (events: readonly TwinEvent[]): readonly TwinEvent[] => [...events].sort((a, b) => a.timeS - b.timeS);
const deeds = told.filter((event) => 'deed' in event && event.timeS <= lastS);
const readings = Array.from({ length: Math.floor(lastS / everyS) }, (_, i) => reading((i + 1) * everyS));
const log = inTime([...deeds, ...readings]);

const members = 128;

/** Time of one late reading, ms. */
function takes(lateByS: number): number {
  const { prepared, recipe } = cook;
  const followed = createFollowed({ prepared, charge: recipe.charge, steps: recipe.steps, members });
  followed.follow(log);
  const later = inTime([...log, reading(Math.max(1, lastS - lateByS - 2))]);
  const begun = performance.now();
  followed.follow(later);
  return performance.now() - begun;
}

const lateS = [60, 600, 3600, lastS];
publish('late', 'A late reading', [
  `A log of ${(lastS / 60).toFixed(0)} minutes with ${readings.length} readings told and ${deeds.length} deeds; ${members} members, as on the page and the command line.`,
  table(
    ['older than the newest by', 'takes, ms'],
    lateS.map((s) => [`${(s / 60).toFixed(0)} min`, takes(s).toFixed(0)]),
  ),
]);
