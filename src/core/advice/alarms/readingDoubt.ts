/** How strange a reading is to the twin, and whether it was sent in another unit than declared. */
import { surpriseLimit, type Taken } from '../../twin/ensemble.ts';

export interface ReadingDoubt {
  /** Reading less what was expected, in standard deviations of both together. */
  readonly surprise: number;
  /** Too strange to be given to the twin before the cook has said that the thermometer is right. */
  readonly strange: boolean;
  readonly otherUnit: OtherUnit | undefined;
}

export interface OtherUnit {
  /** The reading, had it been in the other unit, C. */
  readonly otherC: number;
  /** How many times likelier that is. */
  readonly ratio: number;
}

/** Times likelier before anybody is asked (first value of our own). */
const enough = 100;

/**
 * Fahrenheit sent as Celsius, or Celsius as Fahrenheit, is found by the likelihood under the twin's forecast, taken as normal.
 * Never a reason to convert: ask, with both values shown.
 *
 * @param taken what the twin expected when it was told of the reading
 * @param valueC the reading by its declared unit, C
 */
export function readingDoubt({ expected, sd }: Pick<Taken, 'expected' | 'sd'>, valueC: number): ReadingDoubt {
  const surpriseOf = (value: number): number => (value - expected) / sd;
  const surprise = surpriseOf(valueC);
  const others = [(valueC - 32) / 1.8, 1.8 * valueC + 32];
  const [otherC] = others.toSorted((a, b) => Math.abs(surpriseOf(a)) - Math.abs(surpriseOf(b)));
  const ratio = Math.exp((surprise ** 2 - surpriseOf(otherC) ** 2) / 2);
  const likelier = ratio > enough && Math.abs(surpriseOf(otherC)) <= surpriseLimit;
  return {
    surprise,
    strange: Math.abs(surprise) > surpriseLimit,
    otherUnit: likelier ? { otherC, ratio } : undefined,
  };
}
