import fc from 'fast-check';
import { expect, it } from 'vitest';
import { type Dimension, dimensions } from '../../src/core/units/dimension.ts';
import { parseQuantity } from '../../src/core/units/parseQuantity.ts';
import { QuantityError } from '../../src/core/units/quantityError.ts';
import { allUnits } from '../../src/core/units/units.ts';
import { casesOf, everyCase, tallyOf, timeFor } from './cases.ts';
import { anyText, spoiltText } from './spoilt.ts';

const cases = casesOf(20_000);

it(
  'any text is a finite quantity that can be, or is refused in words that show it',
  async () => {
    const tally = tallyOf('quantities');
    const dimension = fc.constantFrom(...(Object.keys(dimensions) as Dimension[]));
    await everyCase(fc.tuple(texts, dimension), cases, ([text, wanted]) => {
      try {
        const value = parseQuantity(text, wanted);
        tally.count('read');
        expect(Number.isFinite(value) && value >= dimensions[wanted].lowest).toBe(true);
      } catch (error) {
        tally.count('refused');
        if (!(error instanceof QuantityError)) throw error;
        expect(error.message).toContain(text.slice(0, 20));
      }
    });
    tally.tell();
  },
  timeFor(cases, 1),
);

const pieces = [
  ...[
    '1',
    '2.5',
    '0',
    '12',
    ',',
    '.',
    '/',
    '½',
    '⅞',
    ' ',
    '\u00a0',
    '-',
    '\u2212',
    '+',
    'e',
    'E5',
    '9e9',
    '1e999',
    '1e-400',
  ],
  ...['g', 'kg', 'lb', 'oz', 'tsp', '°', 'C', 'F', 'K', 'h', 'min', 's', '%', 'pH', '"', "'", 'mbar', 'kW', '٣', '１'],
];
const spellings = [...new Set(allUnits.flatMap((unit) => unit.spellings))];
const right = fc
  .tuple(fc.double({ min: 0, max: 1e6, noNaN: true }), fc.constantFrom(...spellings), fc.constantFrom('', ' '))
  .map(([number, unit, blank]) => `${number.toPrecision(4)}${blank}${unit}`);

const texts = fc.oneof(
  { weight: 2, arbitrary: right },
  { weight: 2, arbitrary: spoiltText(right) },
  { weight: 4, arbitrary: fc.array(fc.constantFrom(...pieces), { maxLength: 8 }).map((all) => all.join('')) },
  { weight: 1, arbitrary: fc.string({ unit: 'grapheme' }) },
  { weight: 1, arbitrary: anyText() },
);
