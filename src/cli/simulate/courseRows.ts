/** The course of a simulated cook as rows: names with UCUM units, numbers rounded to what they mean. */
import { stringify } from 'csv-stringify/sync';
import { ebcFromA430 } from '../../core/colour/scales.ts';
import { centralValues } from '../../core/pan/model.ts';
import { drawEveryS, type TraceName, tracesOf } from '../../core/planning/forecast.ts';
import { stepNames } from '../plan/stepText.ts';
import type { Rehearsed } from './rehearse.ts';

/** How each trace is named and scaled in the rows, and how many digits after the point it gets. */
const traces: Readonly<Record<TraceName, { name: string; unit: string; scale: number; digits: number }>> = {
  readingC: { name: 'reading', unit: 'Cel', scale: 1, digits: 2 },
  waterShare: { name: 'water', unit: '%', scale: 100, digits: 3 },
  ph: { name: 'ph', unit: '[pH]', scale: 1, digits: 3 },
  inverted: { name: 'inverted', unit: '%', scale: 100, digits: 3 },
  a430: { name: 'colour', unit: '{EBC}', scale: ebcFromA430(1), digits: 3 },
};

export type CourseRow = Readonly<Record<string, number | string | null>>;

/** A row each `everyS`; low and high are empty once most of the drawn cooks are poured. */
export function courseRows({ course, kit, forecast }: Rehearsed): CourseRow[] {
  const central = tracesOf(course, centralValues(kit));
  const names = Object.keys(traces) as TraceName[];
  return Array.from(course.timeS, (timeS, row) => {
    const cells = names.flatMap((trace): [string, number | null][] => {
      const { name, unit, scale, digits } = traces[trace];
      const { low, high } = forecast.bands[trace];
      const shown = (value: number | undefined) => (value === undefined ? null : rounded(value * scale, digits));
      return [
        [`${name}_${unit}`, shown(central[trace][row])],
        [`${name}_low_${unit}`, shown(at(low, timeS))],
        [`${name}_high_${unit}`, shown(at(high, timeS))],
      ];
    });
    return {
      time_s: timeS,
      step: stepAt(course.steps, timeS),
      syrup_Cel: rounded(course.temperatureC[row] ?? Number.NaN, 2),
      boils_Cel: rounded(course.boilsC[row] ?? Number.NaN, 2),
      'steam_g/min': rounded((course.steamKgPerS[row] ?? Number.NaN) * 60_000, 3),
      ...Object.fromEntries(cells),
    };
  });
}

/** RFC 4180: lines end with CR LF. */
export function courseCsv(rehearsed: Rehearsed): string {
  return stringify(courseRows(rehearsed), { header: true, record_delimiter: 'windows' });
}

/** A band between its rows. */
function at(band: Float64Array, timeS: number): number | undefined {
  const position = timeS / drawEveryS;
  const before = Math.floor(position);
  const [a, b] = [band[before], band[before + 1]];
  if (a === undefined) return undefined;
  if (position === before) return a;
  return b === undefined ? undefined : a + (position - before) * (b - a);
}

function stepAt(steps: Rehearsed['course']['steps'], timeS: number): string {
  const step = steps.findLast(({ startS }) => startS <= timeS);
  return step ? stepNames[step.kind] : '';
}

function rounded(value: number, digits: number): number {
  return Number(value.toFixed(digits));
}
