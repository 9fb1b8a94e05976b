/** What the log of a cook tells the twin: its deeds, readings and measurements, in the order of time. */
import type { Reading } from '../log/bodies.ts';
import type { AnyEntry, Entry } from '../log/corrections.ts';
import type { CookState } from '../log/fold.ts';
import { vouchedBeforeS } from '../log/probesApart.ts';
import type { Deed } from '../pan/steps.ts';
import type { Observation } from './observe.ts';
import type { TwinEvent } from './twin.ts';

/** Readings of a thermometer nearer to the last one told than this say nothing new, s. */
const readingsApartS = 4.5;
/** Who vouches for a thermometer means what it shows next as well, s. */
const vouchedAfterS = 120;

/** An event of the twin with the entry of the log that it comes from. */
export type Told = TwinEvent & { readonly id: string };

/**
 * The same entry gives the very same object each time, so that the twin does again only what has changed. Times are whole seconds: a
 * clock that is measured anew shifts them by milliseconds.
 */
export function createTelling(): (state: CookState) => readonly Told[] {
  const known = new Map<string, { readonly text: string; readonly told: Told }>();
  return (state) =>
    toldBy(state).map((told) => {
      const text = JSON.stringify(told);
      const before = known.get(told.id);
      if (before?.text === text) return before.told;
      known.set(told.id, { text, told });
      return told;
    });
}

interface Telling {
  readonly entry: Pick<AnyEntry, 'id' | 'timeS' | 'trueMs'>;
  readonly deed?: Deed | undefined;
  readonly observation: Observation | undefined;
}

type Deeded = CookState['deeds'][number];
type Measured = CookState['measurements'][number];

function toldBy(state: CookState): Told[] {
  const told: Telling[] = [
    ...state.deeds.map((entry) => ({ entry, deed: deedOf(entry), observation: spoonColour(entry) })),
    ...spaced(state.believed).map((entry) => ({ entry, observation: readingOf(entry, state) })),
    ...state.measurements.map((entry) => ({ entry, observation: measured(entry) })),
  ];
  // By the true time, not by the whole second: what happened later must not come to stand before.
  told.sort((a, b) => a.entry.trueMs - b.entry.trueMs);
  return told.flatMap(({ entry: { id, timeS }, deed, observation }): Told[] => {
    const time = { id, timeS: Math.max(0, Math.round(timeS)) };
    if (deed) return [{ ...time, deed }];
    return observation ? [{ ...time, observation }] : [];
  });
}

/** The deed that an entry tells of; none for what does not change the pan in the model. */
export function deedOf(entry: Deeded): Deed | undefined {
  switch (entry.kind) {
    case 'heat':
      return { kind: 'heat', notch: entry.body.notch };
    case 'water':
      return { kind: 'water', waterKg: entry.body.waterKg, spoonfuls: entry.body.spoonfuls };
    case 'alkali': {
      const { substance, alkaliKg, waterKg } = entry.body;
      return { kind: 'alkali', part: { substance, alkaliKg, waterKg } };
    }
    case 'step':
      return { kind: 'step', index: entry.body.index };
    case 'poured':
      return { kind: 'pour' };
    // Neither changes the pan in the model, which takes a pan as stirred.
    case 'stir':
    case 'spoonTest':
      return undefined;
  }
}

function spoonColour(entry: Deeded): Observation | undefined {
  if (entry.kind !== 'spoonTest' || entry.body.a430 === null) return undefined;
  return { kind: 'spoonColour', a430: entry.body.a430 };
}

const measures = ({ valueC, quality }: Reading): boolean =>
  valueC !== null && (quality === 'fresh' || quality === 'late' || quality === 'byHand');

function spaced(readings: readonly Entry<'reading'>[]): readonly Entry<'reading'>[] {
  const lastS = new Map<string, number>();
  return readings.filter(({ timeS, body }) => {
    if (!measures(body)) return false;
    const beforeS = lastS.get(body.probe) ?? Number.NEGATIVE_INFINITY;
    if (body.quality !== 'byHand' && timeS - beforeS < readingsApartS) return false;
    lastS.set(body.probe, timeS);
    return true;
  });
}

function readingOf({ timeS, body }: Entry<'reading'>, { answers }: CookState): Observation | undefined {
  if (body.valueC === null) return undefined;
  const confirmed = answers.some(
    (one) =>
      one.kind === 'vouched' &&
      one.body.probe === body.probe &&
      timeS >= one.timeS - vouchedBeforeS &&
      timeS <= one.timeS + vouchedAfterS,
  );
  return { kind: 'reading', valueC: body.valueC, byHand: body.quality === 'byHand', confirmed };
}

function measured(entry: Measured): Observation {
  switch (entry.kind) {
    case 'weight':
      return { kind: 'weight', contentsKg: entry.body.grossKg - entry.body.tareKg };
    case 'dilutionPh':
      return { kind: 'dilutionPh', ph: entry.body.ph };
    case 'dilutionBrix': {
      const { brix, syrupKg, waterKg } = entry.body;
      return { kind: 'solids', solids: ((brix / 100) * (syrupKg + waterKg)) / syrupKg };
    }
  }
}
