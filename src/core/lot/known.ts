/** A lot as it is known today: what was believed of it, and what was measured in place of that. */
import { expectedHueIndex } from '../colour/hueIndex.ts';
import { ratingA430, specificFromRating } from '../colour/rating.ts';
import { ebcFromA430, icumsaFromSpecific, srmFromA430 } from '../colour/scales.ts';
import type { Range } from '../twin/range.ts';
import type { Lot } from './lot.ts';
import { combined, type Estimate, rangeAround, sdOfRange, z90 } from './measure/estimate.ts';
import { type Result, resultOf } from './measure/resultOf.ts';
import type { Measured, Method, Note } from './note.ts';
import { firstCountKg, type Stock, scaleSdKg, stockOf } from './stock.ts';
import type { Expected } from './yield.ts';

/** What several readings of one thing come to. */
export interface Finding {
  readonly range: Range;
  readonly count: number;
  /** Above 2 the readings contradict each other: one of them is wrong (judgement). */
  readonly apart: number;
}

export interface Known {
  /** As expected, with what was measured in its place. */
  readonly figures: Expected;
  /** None before a first reading. pH is that of a dilution. */
  readonly solids: Finding | undefined;
  readonly colour: Finding | undefined;
  readonly ph: Finding | undefined;
  readonly madeKg: Range;
  readonly stock: Stock;
}

/** Sucrose gains 18.0153/342.2965 of its mass when it is inverted. */
const inversionGain = 18.0153 / 342.2965;

/** Mass share of invert sugar in the dry solids, of the share of the sucrose that was inverted. */
export function invertShare(inverted: number): number {
  return (inverted * (1 + inversionGain)) / (1 + inversionGain * inverted);
}

type Noted = Pick<Lot, 'expected' | 'weighedKg'>;
/** What a measurement of a lot has to know beforehand. */
export type Beforehand = Parameters<typeof resultOf>[1];

export function beforehand({ expected }: Noted, solids: Range = waterless(expected.waterShare)): Beforehand {
  const { inverted } = expected;
  const [low, mid, high] = [inverted.low, inverted.mid, inverted.high].map(invertShare) as [number, number, number];
  return {
    invert: { value: mid, sd: sdOfRange({ low, mid, high }) },
    solids: { value: solids.mid, sd: sdOfRange(solids) },
  };
}

export function knownOf(lot: Noted, notes: readonly Note[]): Known {
  const readings = notes.filter((note) => note.kind === 'measured');
  const solids = finding(readings, beforehand(lot), 'solids', (value, sd) => withinOne(rangeAround(value, sd)));
  const dry = beforehand(lot, solids?.range);
  // Errors of a colour are shares of it: it is brought together in logarithms.
  const colour = finding(readings, dry, 'colour', (value, sd) => factorAround(Math.exp(value), sd));
  const ph = finding(readings, dry, 'ph', rangeAround);
  const weighedKg = lot.weighedKg ?? firstCountKg(notes);
  const madeKg = weighedKg === undefined ? lot.expected.massKg : rangeAround(weighedKg, scaleSdKg);
  const figures = {
    ...lot.expected,
    ...(solids && { waterShare: waterless(solids.range) }),
    ...(colour && coloursOf(colour.range)),
  };
  const stock = stockOf({ kg: madeKg.mid, sd: sdOfRange(madeKg) }, notes);
  return { figures, solids, colour, ph, madeKg, stock };
}

function finding(
  readings: readonly Measured[],
  known: Beforehand,
  quantity: Result['quantity'],
  around: (value: number, sd: number) => Range,
): Finding | undefined {
  const byMethod = new Map<Method, Estimate[]>();
  for (const { reading } of readings) {
    const result = resultOf(reading, known);
    if (result.kind === 'none' || result.quantity !== quantity) continue;
    const estimate =
      quantity === 'colour' ? { ...result.estimate, value: Math.log(result.estimate.value) } : result.estimate;
    byMethod.set(reading.method, [...(byMethod.get(reading.method) ?? []), estimate]);
  }
  if (byMethod.size === 0) return undefined;
  const { value, sd, apart } = combined([...byMethod.values()]);
  const count = [...byMethod.values()].reduce((sum, { length }) => sum + length, 0);
  return { range: around(value, sd), count, apart };
}

/** Range of one reading by itself, as the finding of its quantity gives it. */
export function rangeOfResult(result: Result): Range | undefined {
  if (result.kind === 'none') return undefined;
  const { value, readingSd, methodSd } = result.estimate;
  const sd = Math.hypot(readingSd, methodSd);
  if (result.quantity === 'colour') return factorAround(value, sd);
  return result.quantity === 'solids' ? withinOne(rangeAround(value, sd)) : rangeAround(value, sd);
}

/** Range of a value whose error is a share of it. */
export function factorAround(mid: number, lnSd: number): Range {
  const factor = Math.exp(z90 * lnSd);
  return { low: mid / factor, mid, high: mid * factor };
}

function withinOne({ low, mid, high }: Range): Range {
  return { low: Math.max(0, low), mid, high: Math.min(1, high) };
}

function waterless({ low, mid, high }: Range): Range {
  return { low: 1 - high, mid: 1 - mid, high: 1 - low };
}

function eachMark({ low, mid, high }: Range, change: (mark: number) => number): Range {
  return { low: change(low), mid: change(mid), high: change(high) };
}

/** All scales of a colour, from the specific absorbance of the dry sugar. */
function coloursOf(specific430: Range): Pick<Expected, 'a430' | 'ebc' | 'srm' | 'icumsa'> {
  const a430 = eachMark(specific430, (each) => ratingA430(each, 'tenPercentByWeight'));
  const hue = expectedHueIndex(specific430.mid, 0.5).mean;
  return {
    a430,
    ebc: eachMark(a430, ebcFromA430),
    srm: eachMark(a430, srmFromA430),
    icumsa: eachMark(specific430, (each) => icumsaFromSpecific(each, hue)),
  };
}

export interface ToldLot {
  readonly massKg: number;
  readonly waterShare: Range;
  readonly inverted: Range;
  /** Of a 10 % w/w solution. */
  readonly ebc: number;
}

/** What a sugar's colour and mass may be off by that somebody tells from memory (assumed). */
const toldColour = 1.25;
const toldMass = 0.02;

/** What is believed of a sugar that was made before, and is told by hand. */
export function expectedOfTold({ massKg, waterShare, inverted, ebc }: ToldLot): Expected {
  const mid = specificFromRating(ebc, 'tenPercentByWeight');
  return {
    massKg: { low: massKg * (1 - toldMass), mid: massKg, high: massKg * (1 + toldMass) },
    waterShare,
    inverted,
    ...coloursOf({ low: mid / toldColour, mid, high: mid * toldColour }),
  };
}
