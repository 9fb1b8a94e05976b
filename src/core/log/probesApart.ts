/** Thermometers side by side in one syrup: how far apart they show, and whom of two the cook believes. */
import type { AnyEntry, Entry } from './corrections.ts';
import { grouped } from './grouped.ts';

type Readings = readonly Entry<'reading'>[];

export interface Apart {
  /** What each shows at the last moment that both have shown, the colder first. */
  readonly probes: readonly [Shown, Shown];
  readonly byK: number;
}

interface Shown {
  readonly probe: string;
  readonly valueC: number;
}

/** Further apart than good thermometers, and the places of their tips in the pan, account for, K (first value of our own). */
export const apartK = 2;
/** Who vouches for a thermometer means what it has shown for a while, s. */
export const vouchedBeforeS = 60;
/** A thermometer is taken to have gone straight between readings no further apart than this; an older one says nothing of now, s. */
const straightS = 60;

/** The two that are furthest apart; undefined unless two send. @param readings in true order */
export function furthestApart(readings: Readings, timeS: number): Apart | undefined {
  const probes = [...sending(readings, timeS)];
  const pairs = probes.flatMap(([, one], i) =>
    probes.slice(i + 1).flatMap(([, other]) => apart(one, other, timeS) ?? []),
  );
  return pairs.toSorted((a, b) => b.byK - a.byK)[0];
}

/**
 * The readings of those thermometers that the cook believes. Who vouches for one of two that are apart does not believe the other: from
 * a while before, until they vouch for that.
 * @param answers in true order
 */
export function believedReadings(readings: Readings, answers: readonly AnyEntry[]): Readings {
  const disbelieved: { readonly probe: string; readonly fromS: number; toS: number }[] = [];
  for (const answer of answers) {
    if (answer.kind !== 'vouched') continue;
    const { probe } = answer.body;
    const fromS = answer.timeS - vouchedBeforeS;
    for (const doubt of disbelieved) if (doubt.probe === probe) doubt.toS = Math.min(doubt.toS, fromS);
    const probes = sending(readings, answer.timeS);
    const own = probes.get(probe) ?? [];
    for (const [name, other] of probes) {
      if (name === probe || (apart(own, other, answer.timeS)?.byK ?? 0) <= apartK) continue;
      disbelieved.push({ probe: name, fromS, toS: Number.POSITIVE_INFINITY });
    }
  }
  if (disbelieved.length === 0) return readings;
  return readings.filter(
    ({ body, timeS }) => !disbelieved.some((one) => one.probe === body.probe && timeS >= one.fromS && timeS < one.toS),
  );
}

/** What thermometers that send by themselves have shown of late, by their names. */
function sending(readings: Readings, timeS: number): ReadonlyMap<string, Readings> {
  const since = readings.findLastIndex((one) => one.timeS < timeS - 2 * straightS) + 1;
  const late = readings.slice(since).filter((one) => one.timeS <= timeS);
  const measured = late.filter(({ body: { quality } }) => quality === 'fresh' || quality === 'late');
  return grouped(measured, ({ body }) => body.probe);
}

function apart(one: Readings, other: Readings, timeS: number): Apart | undefined {
  const atS = Math.min(one.at(-1)?.timeS ?? Number.NEGATIVE_INFINITY, other.at(-1)?.timeS ?? Number.NEGATIVE_INFINITY);
  if (timeS - atS > straightS) return undefined;
  const [first, second] = [shownAt(one, atS), shownAt(other, atS)];
  if (!first || !second) return undefined;
  const probes = first.valueC <= second.valueC ? ([first, second] as const) : ([second, first] as const);
  return { probes, byK: probes[1].valueC - probes[0].valueC };
}

function shownAt(readings: Readings, atS: number): Shown | undefined {
  const before = readings.findLast(({ timeS }) => timeS <= atS);
  const after = readings.find(({ timeS }) => timeS >= atS);
  if (before?.body.valueC == null || after?.body.valueC == null) return undefined;
  const gapS = after.timeS - before.timeS;
  if (gapS > straightS) return undefined;
  const share = gapS > 0 ? (atS - before.timeS) / gapS : 0;
  return { probe: before.body.probe, valueC: before.body.valueC + share * (after.body.valueC - before.body.valueC) };
}
