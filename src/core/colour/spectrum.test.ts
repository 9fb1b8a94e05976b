import { describe, expect, it } from 'vitest';
import { a430FromSpecific, ebcFromA430 } from './scales.ts';
import {
  absorbanceAt,
  averageBeerAbsorbance,
  hueIndexOf,
  mixedAbsorbance,
  pigmentAbsorbance,
  pigmentShape,
} from './spectrum.ts';

describe('average beer (deLange 2016)', () => {
  const beer = averageBeerAbsorbance(1);

  it('passes the clarity limit of ASBC Beer-10A, A700 up to 0.039 A430, as its ensemble of clear beers must', () => {
    expect(absorbanceAt(beer, 700)).toBeGreaterThan(0.03);
    expect(absorbanceAt(beer, 700)).toBeLessThanOrEqual(0.039);
  });

  it.each([
    [420, 1.145],
    [450, 0.772],
    [470, 0.602],
    [510, 0.368],
    [520, 0.326],
    [560, 0.2],
    [610, 0.109],
    [700, 0.0364],
  ])('absorbs at %i nm %d times what it does at 430 nm (computed apart from this program)', (nm, ratio) => {
    expect(Math.abs(absorbanceAt(beer, nm) - ratio)).toBeLessThanOrEqual(0.0005);
  });

  it('has a hue index of 5.29', () => {
    expect(Math.abs(hueIndexOf(beer) - 5.29)).toBeLessThanOrEqual(0.02);
  });
});

describe('straight-line pigment (Linner 1970)', () => {
  // A plain caramel syrup's data sheet: A610 0.041 to 0.052 and A560 0.090 to 0.110 at 0.1 % w/v, hue index 7.0, 22 400 EBC.
  const specific610 = 0.0465;
  const specific430 = specific610 / pigmentShape(610, 7);

  it('foretells A560 of a plain caramel sheet from its A610 and hue index', () => {
    const a560 = specific430 * pigmentShape(560, 7);
    expect(a560).toBeGreaterThan(0.09);
    expect(a560).toBeLessThan(0.11);
    expect(a560).toBeCloseTo(0.104, 3);
  });

  it('foretells the EBC of that sheet within the 10 % that the spread of its A610 allows', () => {
    // 0.1 % w/v is 1 g/L; the sheet counts EBC of 1000 g/L.
    const ebc = ebcFromA430(a430FromSpecific(specific430, 1000));
    expect(Math.abs(ebc / 22_400 - 1)).toBeLessThan(0.1);
    expect(specific430).toBeCloseTo(0.846, 2);
  });

  it.each([3, 5, 6.5, 7.5])('gives back its hue index %d', (hueIndex) => {
    expect(hueIndexOf(pigmentAbsorbance(0.8, hueIndex))).toBeCloseTo(hueIndex, 9);
  });
});

it('liquids mix by adding what each absorbs', () => {
  const mixture = mixedAbsorbance(averageBeerAbsorbance(0.3), pigmentAbsorbance(0.5, 6.5));
  expect(absorbanceAt(mixture, 430)).toBeCloseTo(0.8, 12);
  expect(hueIndexOf(mixture)).toBeGreaterThan(hueIndexOf(averageBeerAbsorbance(1)));
  expect(hueIndexOf(mixture)).toBeLessThan(6.5);
});

it('a wavelength off the grid is refused', () => {
  expect(() => absorbanceAt(averageBeerAbsorbance(1), 432)).toThrow('432 nm is not on the grid');
});
