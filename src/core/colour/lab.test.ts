import { convertXyz65ToLab65 } from 'culori/fn';
import { expect, it } from 'vitest';
import { referenceTable } from '../../../test/referenceTable.ts';
import { ciede2000, labOf } from './lab.ts';

it.each(referenceTable('ciede2000-sharma'))(
  'dE00 of ($L1 $a1 $b1) and ($L2 $a2 $b2) is $dE00 (Sharma et al. 2005)',
  (row) => {
    const { L1, a1, b1, L2, a2, b2, dE00 } = row;
    const one = { l: Number(L1), a: Number(a1), b: Number(b1) };
    const other = { l: Number(L2), a: Number(a2), b: Number(b2) };
    expect(Math.abs(ciede2000(one, other) - Number(dE00))).toBeLessThanOrEqual(0.0001);
    expect(ciede2000(other, one)).toBeCloseTo(ciede2000(one, other), 9);
  },
);

it('white is L* 100 without colour, darkness L* 0', () => {
  const white = { x: 95.047, y: 100, z: 108.883 };
  expect(labOf(white, white)).toEqual({ l: 100, a: 0, b: 0 });
  const black = labOf({ x: 0, y: 0, z: 0 }, white);
  expect(black.l).toBeCloseTo(0, 9);
});

// The library's D65 comes from rounded chromaticities, ours from the CIE tables: they part by up to 0.01 % in XYZ.
it.each([
  [90, 95, 90],
  [40, 35, 5],
  [3, 2, 0.1],
  [0.05, 0.03, 0.001],
])('CIELAB of XYZ %d %d %d agrees with a general colour library', (x, y, z) => {
  const ours = labOf({ x, y, z });
  const theirs = convertXyz65ToLab65({ x: x / 100, y: y / 100, z: z / 100 });
  expect(Math.hypot(ours.l - theirs.l, ours.a - (theirs.a ?? 0), ours.b - (theirs.b ?? 0))).toBeLessThanOrEqual(0.05);
});
