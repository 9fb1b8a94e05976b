import { describe, expect, test } from 'vitest';
import type { FieldLine, FieldSpec, Spot } from '../field.ts';
import { defaultRequest } from '../request.ts';
import { axisShare, openAxis, settingAt } from './levers.ts';
import { planeAt, planeOf } from './plane.ts';

const spec: FieldSpec = {
  request: defaultRequest,
  x: { lever: 'alkaliGPerKg', low: 1, high: 5, count: 5 },
  y: { lever: 'brownMinutes', low: 0, high: 20, count: 3 },
};
const spot = (a430: number): Spot =>
  ({ refusals: [], made: Number.isNaN(a430) ? undefined : { a430 } }) as unknown as Spot;
/** Lines of a colour that is a plane, 10 at + row, with what `miss` names left out. */
const line = (at: number, miss = -1): FieldLine => ({
  along: 'y',
  at,
  spots: [0, 1, 2].map((row) => spot(row === miss ? Number.NaN : 10 * at + row)),
});
const colour = ({ a430 }: { readonly a430: number }) => a430;

describe('a plane of the field', () => {
  test('is read straight between the lines that are there', () => {
    const plane = planeOf(spec, [line(4), line(0)], colour);
    expect(planeAt(plane, 0.5, 0)).toBeCloseTo(20, 9);
    expect(planeAt(plane, 0.125, 1)).toBeCloseTo(7, 9);
    expect(planeAt(plane, 0.3, 0.25)).toBeCloseTo(12.5, 9);
  });

  test('stays beyond the last line that is there', () => {
    const plane = planeOf(spec, [line(1), line(2)], colour);
    expect(planeAt(plane, 0, 0)).toBe(10);
    expect(planeAt(plane, 1, 0)).toBe(20);
  });

  test('is nothing where nothing is made, and keeps the other half of the way to it', () => {
    const plane = planeOf(
      spec,
      [0, 1, 2, 3, 4].map((at) => line(at, 2)),
      colour,
    );
    expect(planeAt(plane, 0, 1)).toBeNaN();
    expect(planeAt(plane, 0, 0.8)).toBeNaN();
    expect(planeAt(plane, 0, 0.7)).toBe(1);
  });
});

describe('an open axis', () => {
  test('goes on past the limit of the dose, so that the limit is seen', () => {
    const { high } = openAxis('alkaliGPerKg', defaultRequest, 48);
    expect(high).toBeGreaterThan(8.1);
    expect(high).toBeLessThan(9);
  });

  test('reaches as far as the request does', () => {
    expect(openAxis('brownMinutes', { ...defaultRequest, brownMinutes: 80 }, 32).high).toBe(80);
    expect(openAxis('brownMinutes', defaultRequest, 32).high).toBe(45);
  });

  test('is set in steps that a kitchen can tell apart, and a setting leads back to its place', () => {
    const axis = openAxis('alkaliGPerKg', defaultRequest, 48);
    const setting = settingAt(axis, 0.5);
    expect(setting * 10).toBeCloseTo(Math.round(setting * 10), 9);
    expect(settingAt(axis, axisShare(axis, setting))).toBe(setting);
    expect(settingAt(axis, 2)).toBe(axis.high);
  });
});
