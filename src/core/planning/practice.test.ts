/** What cooks see, as claims (common practice, no source). The scheme's pigment constants were set to such anchors: agreement is no validation. */
import { expect, test } from 'vitest';
import { courseColour } from '../colour/courseColour.ts';
import { dropDepthCm } from '../colour/drop.ts';
import { syrupLab } from '../colour/syrup.ts';
import { type Course, inverted, waterShare } from '../pan/course.ts';
import { defaultKit } from '../pan/kit.ts';
import { centralValues } from '../pan/model.ts';
import { prepareKit } from '../pan/preparedKit.ts';
import { planFor } from './plan.ts';
import { defaultRequest, type PlanRequest } from './request.ts';

const prepared = prepareKit(defaultKit);

function cooked(request: PlanRequest): Course {
  const planned = planFor(request, prepared);
  if (planned.kind === 'refused') throw new Error('refused');
  return planned.course;
}

/** Lightness and hue of a drop on white, at a time. */
function dropAt(course: Course, timeS: number) {
  const row = Math.min(course.timeS.length - 1, Math.round(timeS));
  const { specific430, hueIndex } = courseColour(course, centralValues(defaultKit).absorptivity420);
  const perCm = specific430[row] * (1 - waterShare(course)[row]) * 1450;
  const { l, a, b } = syrupLab(perCm, 2 * dropDepthCm, hueIndex[row]);
  return { lightness: l, hueDegrees: (Math.atan2(b, a) * 180) / Math.PI };
}

test('a deep cook is pale straw before alkali, amber within two minutes of it, dark red-brown after 5 to 10, near black after roast', () => {
  const course = cooked(defaultRequest);
  const parts = course.deeds.filter(({ deed }) => deed.kind === 'alkali').map(({ timeS }) => timeS);
  const [first, last] = [parts[0], parts[parts.length - 1]];
  const roasted = course.steps[course.steps.length - 1].endS;
  const seen = {
    before: dropAt(course, first - 1),
    amber: dropAt(course, first + 100),
    brown: dropAt(course, last + 450),
    roasted: dropAt(course, roasted),
  };
  console.log(
    'drop lightness and hue angle:',
    JSON.stringify(seen, (_, v) => (typeof v === 'number' ? Math.round(v) : v)),
  );
  expect(seen.before.lightness).toBeGreaterThan(92);
  // Orange to amber: hue angle 55 to 90 degrees, mid lightness.
  expect(seen.amber.lightness).toBeGreaterThan(40);
  expect(seen.amber.lightness).toBeLessThan(88);
  expect(seen.amber.hueDegrees).toBeGreaterThan(50);
  expect(seen.brown.lightness).toBeLessThan(30);
  expect(seen.brown.hueDegrees).toBeLessThan(50);
  expect(seen.roasted.lightness).toBeLessThan(8);
});

test('two hours with acid stay pale: golden at most, and inverted nearly to the end', () => {
  const course = cooked({ ...defaultRequest, route: 'pale', form: 'syrup', invertMinutes: 120 });
  const end = dropAt(course, course.steps[2].endS);
  expect(end.lightness).toBeGreaterThan(75);
  expect(inverted(course).at(-1)).toBeGreaterThan(0.95);
});

test('without acid the hold inverts little, as published kinetics say: 1 to 15 % before alkali', () => {
  const course = cooked(defaultRequest);
  const share = inverted(course)[Math.round(course.steps[2].endS)];
  expect(share).toBeGreaterThan(0.01);
  expect(share).toBeLessThan(0.15);
});
