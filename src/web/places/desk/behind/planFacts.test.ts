import { expect, test } from 'vitest';
import { differencesOf } from '../../../../core/book/differences.ts';
import { defaultKit } from '../../../../core/pan/kit.ts';
import { centralValues } from '../../../../core/pan/model.ts';
import { prepareKit } from '../../../../core/pan/preparedKit.ts';
import { describe as courseOf } from '../../../../core/planning/forecast.ts';
import { planFor } from '../../../../core/planning/plan.ts';
import { defaultRequest, type PlanRequest } from '../../../../core/planning/request.ts';
import { planFacts } from './planFacts.ts';

const prepared = prepareKit(defaultKit);

function facts(changes: Partial<PlanRequest>, unit: 'C' | 'F' = 'C') {
  const planned = planFor({ ...defaultRequest, ...changes }, prepared);
  if (planned.kind === 'refused') throw new Error('refused');
  const { ends } = courseOf(planned.course, centralValues(defaultKit), 1);
  return planFacts({ plan: planned.plan, ends }, unit);
}

const differing = (a: Partial<PlanRequest>, b: Partial<PlanRequest>) =>
  Object.fromEntries(
    differencesOf([facts(a), facts(b)])
      .filter(({ values: [mine, theirs] }) => mine !== theirs)
      .map(({ what, values }) => [what, values]),
  );

test('a plan beside itself differs in nothing', () => {
  expect(differing({}, {})).toEqual({});
});

test('a smaller dose and a shorter hold are told as they were asked for, with what comes of them: paler, sooner', () => {
  const rows = differing({}, { alkaliGPerKg: 4, brownMinutes: 20 });
  expect(rows).toMatchObject({ 'Dose, sodium hydroxide': [5, 4], 'Brown for': [25, 20] });
  expect(rows).not.toHaveProperty('Invert for');
  const [darker = 0, paler = 0] = rows['Colour'] ?? [];
  expect(Number(darker)).toBeGreaterThan(Number(paler));
  const [later = 0, sooner = 0] = rows['Cold pan to pour'] ?? [];
  expect(Number(later)).toBeGreaterThan(Number(sooner) + 3);
});

test('what one of them does not have stands for nothing on its side', () => {
  const rows = differing({}, { route: 'pale' });
  expect(rows).toMatchObject({
    'Dose, sodium hydroxide': [5, null],
    'Roast for': [7, null],
    'Citric acid': [null, 1.5],
  });
});

test('temperatures are counted in the unit of the page', () => {
  expect(facts({}, 'F')).toContainEqual({ what: 'Invert at', unit: '°F', digits: 0, value: 266 });
});

test('a further hold stands with its heat and its minutes, and with nothing on the side that has none', () => {
  expect(differing({}, { moreHolds: [{ celsius: 157, minutes: 4 }] })).toMatchObject({
    'Further hold 1 at': [null, 157],
    'Further hold 1 for': [null, 4],
  });
});
