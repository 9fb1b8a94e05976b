import { randomBytes, randomUUID } from 'node:crypto';
import { expect, it } from 'vitest';
import { bareCook } from '../../../test/bareCook.ts';
import { startMs } from '../../../test/sampleCook.ts';
import { createRehearsal, followAdvice } from '../advice/rehearsal.ts';
import { revealOf } from '../advice/reveal.ts';
import type { LogEvent } from '../log/event.ts';
import { foldCook } from '../log/fold.ts';
import { defaultKit } from '../pan/kit.ts';
import { prepareKit } from '../pan/preparedKit.ts';
import type { Step } from '../pan/steps.ts';
import { judgedAgain } from './judgedAgain.ts';
import { asKept } from './keptRehearsal.ts';

const charge = { sucroseKg: 0.4, waterKg: 0.08, maltExtractKg: 0.0032, citricAcidKg: 0 };
const plain = { alkali: [], waitS: 0, approachNotch: 5, holdNotch: 2 } as const;
const steps: readonly Step[] = [
  { ...plain, kind: 'dissolve', bandC: [21, 106], end: { reachedC: 106 } },
  { ...plain, kind: 'invert', bandC: [112, 133], end: { heldMinutes: 8 } },
  { ...plain, kind: 'roast', bandC: [152, 158], end: { heldMinutes: 6 } },
];

/** A rehearsal that went as it was advised, and its log as the Book keeps it. */
function rehearsed(seed: number, surprises: boolean) {
  const begun = { ...bareCook(charge, steps, seed), rehearsal: { seed, speed: 1, surprises } };
  const rehearsal = createRehearsal({ prepared: prepareKit(defaultKit), begun, members: 32 });
  followAdvice(rehearsal, steps, { reactionS: 25, longestS: 5400 });
  const [cook, bootId, device] = [randomUUID(), randomUUID(), randomUUID()];
  const keeping = { cook, bootId, tz: 'UTC', endMs: startMs + 7_200_000, random: () => randomBytes(10) };
  const events: LogEvent[] = asKept(rehearsal.events, keeping).map((event, place) => ({
    ...{ ...event, device, deviceSeq: place + 1 },
  }));
  return { told: revealOf(rehearsal, defaultKit, charge).surprises, events };
}

it.each([4, 9])(
  'surprises of rehearsal %i are those that were told at its end, within half a minute',
  (seed) => {
    const { told = [], events } = rehearsed(seed, true);
    const { surprises = [], history } = judgedAgain(foldCook(events), events, 32);
    expect(told.length).toBeGreaterThan(0);
    expect(surprises.map(({ name }) => name)).toEqual(told.map(({ name }) => name));
    for (const [place, { beganS, saidS }] of surprises.entries()) {
      expect(Math.abs(beganS - (told[place]?.beganS ?? Number.NaN))).toBeLessThanOrEqual(30);
      expect(Math.abs((saidS ?? Number.NaN) - (told[place]?.saidS ?? Number.NaN))).toBeLessThanOrEqual(30);
    }
    expect(history.length).toBeGreaterThan(0);
  },
  60_000,
);

it('a rehearsal without them has none, and nor has a log that does not say how it began', () => {
  const { events } = rehearsed(4, false);
  expect(judgedAgain(foldCook(events), events, 8).surprises).toBeUndefined();
  const headless = events.filter(({ kind }) => kind !== 'begun');
  expect(judgedAgain(foldCook(headless), headless, 8)).toEqual({ history: [], surprises: undefined });
}, 60_000);
