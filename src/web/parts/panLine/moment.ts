/** What holds at one time of a planned cook, as values and in words. */

import type { StepKind, TimedDeed } from '../../../core/pan/steps.ts';
import { drawEveryS, type TraceName, traceNames } from '../../../core/planning/forecast.ts';
import type { Range } from '../../../core/twin/range.ts';
import { clock, ebcOf, span } from '../figures.ts';
import { stepNames } from '../stepNames.ts';
import { inUnit, type TemperatureUnit } from '../temperature.ts';
import { type Bands, drawnEveryS, type Picture } from './picture.ts';

export interface Moment {
  readonly timeS: number;
  readonly kind: StepKind;
  readonly values: Readonly<Record<TraceName, number>>;
  /** 10-90 % ranges, once the draws are there and while most of them still cook. */
  readonly ranges: Readonly<Record<TraceName, Range>> | undefined;
  readonly deeds: readonly string[];
}

export function momentAt(picture: Picture, bands: Bands | undefined, timeS: number): Moment {
  const rows = picture.traces.readingC.length;
  const row = Math.min(rows - 1, Math.round(timeS / drawnEveryS));
  const step = picture.steps.findLast(({ startS }) => startS <= timeS) ?? picture.steps[0];
  // The pour comes between two rows; its values are kept apart.
  const end = timeS >= picture.endS ? picture.ends.at(-1) : undefined;
  const values = eachTrace((name) => end?.[name] ?? picture.traces[name][row] ?? 0);
  const at = Math.round(timeS / drawEveryS);
  const columns = bands?.forecast.bands;
  const poured = timeS >= picture.endS ? bands?.forecast.steps.at(-1) : undefined;
  const ranges =
    poured ??
    (columns && at < columns.readingC.low.length
      ? eachTrace((name) => {
          const [low, high] = [columns[name].low[at] ?? 0, columns[name].high[at] ?? 0];
          return { low, mid: values[name], high };
        })
      : undefined);
  return { timeS, kind: step?.kind ?? 'dissolve', values, ranges, deeds: deedsNear(picture.deeds, timeS) };
}

function eachTrace<V>(of: (name: TraceName) => V): Readonly<Record<TraceName, V>> {
  return Object.fromEntries(traceNames.map((name) => [name, of(name)])) as Record<TraceName, V>;
}

const nearS = 20;

function deedsNear(deeds: readonly TimedDeed[], timeS: number): string[] {
  return deeds
    .filter((each) => Math.abs(each.timeS - timeS) <= nearS)
    .flatMap(({ deed }) => {
      if (deed.kind === 'heat') return [`dial to ${deed.notch}`];
      if (deed.kind === 'alkali') return ['a part of alkali'];
      if (deed.kind === 'water') return [deed.spoonfuls > 0 ? 'a spoonful of cold water' : 'a portion of water'];
      return deed.kind === 'pour' ? ['pour'] : [];
    })
    .filter((words, i, all) => all.indexOf(words) === i);
}

export interface Said {
  readonly name: string;
  readonly value: string;
  readonly range: string | undefined;
}

/** The moment's values, each with its range. */
export function saidOf({ values, ranges }: Moment, unit: TemperatureUnit): readonly Said[] {
  const say = (name: string, trace: TraceName, show: (value: number) => string, after = ''): Said => ({
    name,
    value: `${show(values[trace])}${after}`,
    range: ranges && `${span(ranges[trace], show)}${after}`,
  });
  const share = (value: number) => (value * 100).toFixed(values.waterShare < 0.1 ? 1 : 0);
  return [
    say('Temperature', 'readingC', (c) => inUnit(c, unit).toFixed(0), ` °${unit}`),
    say('Water', 'waterShare', share, ' %'),
    say('Hot pH', 'ph', (ph) => ph.toFixed(1)),
    say('Inverted', 'inverted', (value) => (value * 100).toFixed(0), ' %'),
    say('Colour, EBC', 'a430', ebcOf),
  ];
}

/** The moment as one sentence, for those who hear it. */
export function sentenceOf(moment: Moment, unit: TemperatureUnit): string {
  const said = saidOf(moment, unit).map(
    ({ name, value, range }) => `${name} ${value}${range ? ` (8 in 10: ${range})` : ''}`,
  );
  const deeds = moment.deeds.length > 0 ? `; ${moment.deeds.join(', ')}` : '';
  return `${clock(moment.timeS / 60)}, ${stepNames[moment.kind]}: ${said.join('; ')}${deeds}`;
}
