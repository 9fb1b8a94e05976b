import { expect, test } from 'vitest';
import { courseColour } from '../colour/courseColour.ts';
import { ratingA430 } from '../colour/rating.ts';
import { inverted, waterShare } from '../pan/course.ts';
import { defaultKit } from '../pan/kit.ts';
import { centralValues } from '../pan/model.ts';
import { prepareKit } from '../pan/preparedKit.ts';
import { planFor } from '../planning/plan.ts';
import { defaultRequest } from '../planning/request.ts';
import { unseenOf } from './unseen.ts';

test('a pan is told of by the same measures in a plan and by the twin, while sugar dissolves and after', () => {
  const prepared = prepareKit(defaultKit);
  const planned = planFor(defaultRequest, prepared);
  if (planned.kind === 'refused') throw new Error('refused');
  const { course, plan } = planned;
  const values = centralValues(defaultKit);
  const [water, share] = [waterShare(course), inverted(course)];
  const { specific430 } = courseColour(course, values.absorptivity420);
  for (let row = 0; row < course.timeS.length; row += 60) {
    const y = Float64Array.from(course.states, (column) => column[row]);
    const seen = unseenOf({ y, values, ph: course.ph[row] }, plan.amounts.charge);
    expect(seen.waterShare).toBeCloseTo(water[row], 9);
    expect(seen.inverted).toBeCloseTo(share[row], 4);
    expect(seen.a430).toBeCloseTo(ratingA430(specific430[row], 'tenPercentByWeight'), 9);
  }
});
