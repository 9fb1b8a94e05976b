/**
 * Marks on the readings of one thermometer, by what it showed before: whatever needs no model of the pan. Nothing is thrown
 * away or put right: a mark says how far a reading is to be believed, and what was sent stays beside it.
 * Limits are first values of our own unless a source is named.
 */
import type { Reading } from './bodies.ts';

export const readingFaults = ['noTemperature', 'powerUp', 'tooCold', 'jump'] as const;
export type ReadingFault = (typeof readingFaults)[number];

/** What has to be kept between two readings of a thermometer. */
export interface ProbeMemory {
  readonly believed: Shown | undefined;
  /** Where it went from there, not believed yet. */
  readonly jumped: (Shown & { readonly sinceS: number }) | undefined;
}

interface Shown {
  readonly valueC: number;
  readonly timeS: number;
}

export interface Marked {
  readonly reading: Reading;
  readonly fault: ReadingFault | undefined;
  readonly memory: ProbeMemory;
}

/** A digital sensor of a common kind answers with this before its first conversion (data sheet of such a sensor, power-on value +85 C, from memory). */
const powerUpC = 85;
const near = 1e-6;
/** Nothing at a stove is colder. Hot has no such limit: Fahrenheit sent as Celsius is hot, and is asked about. */
const coldestC = -10;
/** No pan and no probe in it goes further within a second, and then on for each second more, up to half a minute: C, C/s. */
const jumpC = 8;
const jumpCPerS = 1.5;
const mostS = 30;
/** A spike is over by then: where the probe still is, it really is, s. */
const spikeS = 3;
/** What was shown so long ago says nothing of now: another cook may have begun, s. */
const forgottenS = 600;

export const noMemory: ProbeMemory = { believed: undefined, jumped: undefined };

/** @param timeS when it came, by a clock that does not go back, s */
export function markReading(memory: ProbeMemory, reading: Reading, timeS: number): Marked {
  const { valueC } = reading;
  if (valueC === null) return { reading, fault: 'noTemperature', memory };
  const { believed, jumped } = timeS - (memory.believed?.timeS ?? timeS) > forgottenS ? noMemory : memory;
  const shown = { valueC, timeS };
  const follows = believed !== undefined && isWithinReach(believed, shown);
  if (Math.abs(valueC - powerUpC) < near && !follows) return { reading: lost(reading), fault: 'powerUp', memory };
  if (valueC < coldestC) return { reading: doubtful(reading), fault: 'tooCold', memory };
  if (believed === undefined || follows)
    return { reading, fault: undefined, memory: { believed: shown, jumped: undefined } };
  const stays = jumped !== undefined && isWithinReach(jumped, shown);
  const next = { ...shown, sinceS: stays ? jumped.sinceS : timeS };
  if (stays && timeS - next.sinceS >= spikeS) {
    return { reading, fault: undefined, memory: { believed: shown, jumped: undefined } };
  }
  return { reading: doubtful(reading), fault: 'jump', memory: { believed, jumped: next } };
}

function isWithinReach(before: Shown, { valueC, timeS }: Shown): boolean {
  const moreS = Math.min(Math.max(timeS - before.timeS - 1, 0), mostS);
  return Math.abs(valueC - before.valueC) <= jumpC + jumpCPerS * moreS;
}

const doubtful = (reading: Reading): Reading => ({ ...reading, quality: 'doubtful' });
const lost = (reading: Reading): Reading => ({ ...reading, valueC: null, quality: 'lost' });
