import { expect, test } from 'vitest';
import { defaultKit } from '../pan/kit.ts';
import { centralValues } from '../pan/model.ts';
import { prepareKit } from '../pan/preparedKit.ts';
import { describe as courseOf } from '../planning/forecast.ts';
import { planFor } from '../planning/plan.ts';
import { defaultRequest, type PlanRequest } from '../planning/request.ts';
import { rowsBeside } from './differences.ts';
import { planFacts } from './planFacts.ts';

const prepared = prepareKit(defaultKit);

function facts(changes: Partial<PlanRequest>) {
  const planned = planFor({ ...defaultRequest, ...changes }, prepared);
  if (planned.kind === 'refused') throw new Error('refused');
  const { ends } = courseOf(planned.course, centralValues(defaultKit), 1);
  return planFacts(planned.plan, ends);
}

const differing = (a: Partial<PlanRequest>, b: Partial<PlanRequest>) =>
  Object.fromEntries(
    rowsBeside([facts(a), facts(b)])
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

test('a further hold stands with its heat and its minutes, and with nothing on the side that has none', () => {
  expect(differing({}, { moreHolds: [{ celsius: 157, minutes: 4 }] })).toMatchObject({
    'Further hold 1 at': [null, 157],
    'Further hold 1 for': [null, 4],
  });
});

test('rows stand in the order of a cook, also those that only one of them has', () => {
  const rows = rowsBeside([facts({}), facts({ route: 'pale', form: 'syrup' })]).map(({ what }) => what);
  const order = [
    'Finished sugar',
    'Solids',
    'Malt extract',
    'Citric acid',
    'Dose, sodium hydroxide',
    'Invert at',
    'Roast for',
  ];
  expect(rows.filter((what) => order.includes(what))).toEqual(order);
  expect(rows.at(-1)).toBe('Inverted');
});
