/** A simulated cook as a table: for each step the plan's own course, and below it the 10-90 % band of the draws. */
import { ebcFromA430 } from '../../core/colour/scales.ts';
import type { StepForecast } from '../../core/planning/forecast.ts';
import type { Range } from '../../core/twin/range.ts';
import { ebcText, stepNames } from '../plan/stepText.ts';
import { swatch } from '../swatch.ts';
import { type Column, table } from '../table.ts';
import type { Rehearsed } from './rehearse.ts';

interface Shown {
  readonly head: string;
  readonly of: (step: StepForecast) => Range;
  readonly text: (value: number) => string;
}

const whole = (value: number) => value.toFixed(0);
const tenth = (value: number) => value.toFixed(1);
const twoFigures = (value: number) => value.toFixed(value < 9.95 ? 1 : 0);

const shownColumns: readonly Shown[] = [
  { head: 'min', of: ({ minutes }) => minutes, text: whole },
  { head: 'at min', of: ({ endMinute }) => endMinute, text: whole },
  { head: 'reads °C', of: ({ readingC }) => readingC, text: whole },
  { head: 'spoons', of: ({ spoonfuls }) => spoonfuls, text: whole },
  { head: 'water %', of: ({ waterShare }) => waterShare, text: (share) => twoFigures(100 * share) },
  { head: 'pH', of: ({ ph }) => ph, text: tenth },
  { head: 'invert %', of: ({ inverted }) => inverted, text: (share) => whole(100 * share) },
  { head: 'EBC', of: ({ a430 }) => a430, text: (a430) => ebcText(ebcFromA430(a430)) },
];

export function simulationText(rehearsed: Rehearsed, colour: boolean): string {
  const { forecast, plan, run, drops } = rehearsed;
  const rows = forecast.steps.flatMap((step, at) => {
    const paint = colour ? [drops[at] ? swatch(drops[at]) : ''] : [];
    const middles = shownColumns.map(({ of, text }) => text(of(step).mid));
    const bands = shownColumns.map(({ of, text }) => bandText(of(step), text));
    return [
      [...paint, stepNames[step.kind], ...middles],
      [...paint, '', ...bands],
    ];
  });
  const heads: Column[] = shownColumns.map(({ head }) => ({ head, align: 'right' }));
  const columns: Column[] = [
    ...(colour ? [{ head: '', align: 'left' } as const] : []),
    { head: 'step', align: 'left' },
    ...heads,
  ];
  const { low, mid, high } = forecast.yieldKg;
  const grams = (kg: number) => (1000 * kg).toFixed(0);
  return [
    `${plan.request.name}: ${plan.request.route} route, simulated ${run.draws} times (seed ${run.seed})`,
    '',
    table(columns, rows),
    '',
    `Pours ${grams(mid)} g (${grams(low)}-${grams(high)}). Each step: how long it takes, and what it ends with; below that\nthe 10-90 % band. spoons: spoonfuls of cold water. pH: hot. EBC: of a 10 % w/w solution.\nA simulation: the pan on the stove decides.`,
  ].join('\n');
}

function bandText({ low, high }: Range, text: (value: number) => string): string {
  const [from, to] = [text(low), text(high)];
  return from === to ? '' : `${from}-${to}`;
}
