import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { defaultKit } from '../pan/kit.ts';
import { prepareKit } from '../pan/preparedKit.ts';
import { gridOf } from './field/grid.ts';
import { leversOf, usualAxis } from './field/levers.ts';
import { madeByCourse } from './field/made.ts';
import { createField, type FieldSpec, fieldLines, requestAt, usualField } from './field.ts';
import { planFor } from './plan.ts';
import { defaultRequest } from './request.ts';

const prepared = prepareKit(defaultKit);

function cooked(spec: FieldSpec) {
  return gridOf(spec, fieldLines(spec).map(createField(spec, prepared).line));
}

describe('a spot of the field', () => {
  test('has the colour, taste and time of a plan of its own: within 2 %, 0.2 and 4 minutes (bench/results/field.md)', () => {
    for (const route of ['deep', 'bright'] as const) {
      const spec = usualField({ ...defaultRequest, route }, 5, 4);
      const grid = cooked(spec);
      for (const [column, row] of [
        [0, 1],
        [2, 3],
        [3, 0],
        [4, 2],
      ] as const) {
        const planned = planFor(requestAt(spec, column, row), prepared);
        if (planned.kind === 'refused') throw new Error('refused');
        const own = madeByCourse(planned.course, planned.plan, prepared);
        const made = grid.spot(column, row)?.made;
        if (!made) throw new Error('nothing made');
        expect(Math.abs(made.a430 / own.a430 - 1), `${route} ${column} ${row}`).toBeLessThan(0.02);
        expect(Math.abs(made.minutes - own.minutes)).toBeLessThan(4);
        expect(Math.abs(made.taste.fruit - own.taste.fruit)).toBeLessThan(0.2);
        expect(Math.abs(made.taste.toffee - own.taste.toffee)).toBeLessThan(0.2);
      }
    }
  });

  test('is the same whichever worker cooks its line, and in whichever order: within the tolerance of the cook', () => {
    const spec = usualField(defaultRequest, 6, 4);
    const together = cooked(spec);
    for (const at of [5, 0, 3]) {
      const alone = createField(spec, prepared).line(at);
      for (const [row, { made }] of alone.spots.entries()) {
        const other = together.spot(at, row)?.made;
        expect(Math.abs((made?.a430 ?? 0) / (other?.a430 ?? 1) - 1)).toBeLessThan(1e-3);
      }
    }
  });

  test('beyond a limit of safety is not made, and says which limit and what is allowed', () => {
    const spec: FieldSpec = {
      ...usualField(defaultRequest, 3, 2),
      x: { lever: 'alkaliGPerKg', low: 4, high: 12, count: 3 },
    };
    const grid = cooked(spec);
    expect(grid.spot(0, 0)?.refusals).toEqual([]);
    const beyond = grid.spot(2, 1);
    expect(beyond?.made).toBeUndefined();
    expect(beyond?.refusals.map(({ limit }) => limit)).toEqual(['LIM-ALKALI-DOSE']);
    expect(beyond?.refusals[0]?.message).toContain('allowed is 8.0 g');
  });

  test('is darker with more alkali and longer browning, and tastes more of alkali', () => {
    const grid = cooked(usualField({ ...defaultRequest, route: 'bright' }, 4, 3));
    for (let column = 0; column < 4; column++) {
      for (let row = 0; row < 3; row++) {
        const here = grid.spot(column, row)?.made;
        const right = grid.spot(column + 1, row)?.made;
        const above = grid.spot(column, row + 1)?.made;
        if (here && right && column < 3) {
          expect(right.a430).toBeGreaterThan(here.a430);
          expect(right.taste.alkali).toBeGreaterThan(here.taste.alkali);
        }
        if (here && above && row < 2) expect(above.a430).toBeGreaterThan(here.a430);
      }
    }
  });
});

test('any two levers of a route span a field, and every spot is either made or refused by a named limit', () => {
  const anyField = fc.constantFrom('pale', 'bright', 'deep').chain((route) => {
    const request = { ...defaultRequest, route: route as 'deep', invertMinutes: 10, brownMinutes: 8, roastMinutes: 3 };
    return fc
      .shuffledSubarray([...leversOf(request.route)], { minLength: 2, maxLength: 2 })
      .map(([x, y]): FieldSpec => ({ request, x: usualAxis(x, request, 2), y: usualAxis(y, request, 3) }));
  });
  fc.assert(
    fc.property(anyField, (spec) => {
      const grid = cooked(spec);
      for (let column = 0; column < 2; column++) {
        for (let row = 0; row < 3; row++) {
          const spot = grid.spot(column, row);
          const refused = planFor(requestAt(spec, column, row), prepared).kind === 'refused';
          expect(spot?.made === undefined).toBe(refused);
          for (const { limit, message } of spot?.refusals ?? []) {
            expect(limit).toMatch(/^LIM-/);
            expect(message).toContain('allowed');
          }
        }
      }
    }),
    { numRuns: 12 },
  );
});

test('a field of one lever twice, or of a lever beyond its range, is refused by name', () => {
  const spec = usualField(defaultRequest, 3, 3);
  expect(() => createField({ ...spec, y: spec.x }, prepared)).toThrow('both levers of the field are alkaliGPerKg');
  expect(() => createField({ ...spec, x: { ...spec.x, high: 20 } }, prepared)).toThrow(
    'high end of alkaliGPerKg is 20',
  );
});

test('another roast hold gives what a field of its own gives', () => {
  const spec = usualField(defaultRequest, 3, 3);
  const first = createField(spec, prepared);
  first.line(1);
  const again = first.further({ roastMinutes: 15 });
  const own = createField({ ...spec, request: { ...defaultRequest, roastMinutes: 15 } }, prepared, {
    sucroseKg: first.sucroseKg,
  });
  for (const [row, { made }] of again.line(1).spots.entries()) {
    const other = own.line(1).spots[row]?.made;
    expect(Math.abs((made?.a430 ?? 0) / (other?.a430 ?? 1) - 1)).toBeLessThan(1e-3);
    expect(made?.minutes).toBeGreaterThan((first.line(1).spots[row]?.made?.minutes ?? 0) + 6);
  }
});

test('a half-finished field is painted from the lines that are there', () => {
  const spec = usualField(defaultRequest, 8, 2);
  const field = createField(spec, prepared);
  const grid = gridOf(spec, fieldLines(spec).slice(0, 2).map(field.line));
  expect(grid.spot(3, 0)).toBeUndefined();
  expect(grid.nearest(3, 0)).toBe(grid.spot(0, 0));
  expect(grid.nearest(5, 1)).toBe(grid.spot(7, 1));
});
