import { describe, expect, it } from 'vitest';
import { defaultKit } from '../../core/pan/kit.ts';
import { planCautions } from '../../core/planning/cautions.ts';
import { defaultRequest } from '../../core/planning/request.ts';
import { aimEntries, typedAim } from '../places/desk/aimEntries.ts';
import { replaced, rewritten, type Sheet, textOf, troubles, typed } from './entry.ts';
import { kitEntries } from './kit/kitEntries.ts';

const entries = aimEntries('C');
const fresh = { good: defaultRequest, texts: {} };
const afterTyping = (field: string, text: string) => typed(fresh, entries, field, text);

describe('a field that is typed into', () => {
  it.each([
    ['massKg', '1lb', 'massKg', 0.45359237],
    ['massKg', '12 oz', 'massKg', 0.340194],
    ['massKg', '350', 'massKg', 0.35],
    ['invertC', '266F', 'invertC', 130],
    ['invertC', '128', 'invertC', 128],
    ['brownMinutes', '1/2 h', 'brownMinutes', 30],
    ['syrupSolids', '78 °Bx', 'syrupSolids', 0.78],
    ['syrupSolids', '78', 'syrupSolids', 0.78],
    ['alkaliGPerKg', '4,5 g/kg', 'alkaliGPerKg', 4.5],
    ['alkaliGPerKg', '4.5g / kg', 'alkaliGPerKg', 4.5],
    ['solutionStrength', '10 %', 'solutionStrength', 0.1],
    ['alkaliActive', '85', 'alkaliActive', 0.85],
    ['alkaliCarbonate', '2 %', 'alkaliCarbonate', 0.02],
  ] as const)('takes %s %s', (field, text, name, value) => {
    const sheet = afterTyping(field, text);
    expect(troubles(sheet, entries)).toEqual({});
    expect(sheet.good[name]).toBeCloseTo(value, 6);
  });

  it.each([
    ['massKg', 'a lot', 'Finished sugar: “a lot” is not understood. Allowed: 100 g to 5000 g.'],
    ['massKg', '-5', 'Finished sugar: “-5” is too little. Allowed: 100 g to 5000 g.'],
    ['massKg', '3 tsp', 'Finished sugar: “3 tsp” is a volume. Allowed: 100 g to 5000 g.'],
    ['massKg', '', 'Finished sugar is empty. Allowed: 100 g to 5000 g.'],
    ['massKg', '99 g', 'Finished sugar: “99 g” is too little. Allowed: 100 g to 5000 g.'],
    ['massKg', '9'.repeat(70), `Finished sugar: “${'9'.repeat(24)}…” is too long. Allowed: 100 g to 5000 g.`],
    ['invertC', '200', 'Invert at: “200” is too much. Allowed: 110 °C to 140 °C.'],
    ['alkaliGPerKg', '5 g/L', 'Dose: “5 g/L” is not understood. Allowed: 0.2 g/kg to 12 g/kg.'],
    ['alkaliActive', '40 %', 'Active part: “40 %” is too little. Allowed: 50% to 100%.'],
    ['alkaliCarbonate', '31', 'Carbonate: “31” is too much. Allowed: 0% to 30%.'],
    ['alkaliCarbonate', '10', 'Carbonate: “10%” is too much beside 97% of hydroxide. Allowed: 0% to 3%.'],
    ['name', '  ', 'Name is empty. Allowed: 1 to 80 characters.'],
    ['name', 'x'.repeat(81), 'Name has 81 characters. Allowed: 1 to 80 characters.'],
  ])(
    'refuses %s %s in a sentence with the field’s label, what was given and what is allowed, and keeps the last good value',
    (field, text, message) => {
      const sheet = afterTyping(field, text);
      expect(troubles(sheet, entries)[field]).toBe(message);
      expect(sheet.good).toEqual(defaultRequest);
      expect(textOf(sheet, entries, field)).toBe(text);
    },
  );

  it('takes every limit as it is written out, in either unit of temperature', () => {
    // So weak an alkali has room for all the carbonate that is allowed.
    const weak = { ...fresh, good: { ...defaultRequest, alkaliActive: 0.7 } };
    for (const unit of ['C', 'F'] as const) {
      const fields = aimEntries(unit);
      for (const field of Object.keys(fields)) {
        const [, least = '', most = ''] = /Allowed: (.*) to (.*)\./.exec(limitsOf(fields, field)) ?? [];
        for (const text of [least, most].filter((each) => each !== '' && field !== 'name'))
          expect(troubles(typed(weak, fields, field, text), fields), `${field} ${text}`).toEqual({});
      }
    }
  });

  it('of carbonate that was refused beside the hydroxide is read anew when that is typed, and cautions', () => {
    const first = typedAim(fresh, entries, 'alkaliCarbonate', '10');
    expect(first.good).toEqual(defaultRequest);
    const both = typedAim(first, entries, 'alkaliActive', '85');
    expect(troubles(both, entries)).toEqual({});
    expect(both.good).toMatchObject({ alkaliActive: 0.85, alkaliCarbonate: 0.1 });
    expect(planCautions(both.good).map(({ id }) => id)).toEqual(['CAU-STALE-ALKALI']);
    const back = typedAim(both, entries, 'alkaliActive', '95');
    expect(troubles(back, entries)['alkaliActive']).toMatch(/beside 10% of carbonate. Allowed: 50% to 90%/);
    expect(typedAim(back, entries, 'alkaliCarbonate', '1').good).toMatchObject({
      alkaliActive: expect.closeTo(0.95, 9),
      alkaliCarbonate: 0.01,
    });
  });

  it('shows every value of a kit so that it can be read back', () => {
    const kits = kitEntries('F');
    for (const [field, entry] of Object.entries(kits)) {
      const sheet = typed({ good: defaultKit, texts: {} }, kits, field, entry.show(defaultKit));
      expect(troubles(sheet, kits), field).toEqual({});
    }
  });

  it('shows a spoon as people write it', () => {
    const spoon = kitEntries('C')['spoonM3'];
    expect(spoon?.show(defaultKit)).toBe('1 tsp');
    expect(spoon?.show({ ...defaultKit, spoonM3: 3.5e-6 })).toBe('3.5 mL');
  });

  it('of a further hold change that hold alone, and give way when holds are added or taken away', () => {
    const moreHolds = [
      { celsius: 156, minutes: 2 },
      { celsius: 158, minutes: 3 },
    ];
    const sheet = typed({ good: { ...defaultRequest, moreHolds }, texts: {} }, entries, 'moreHolds.1.minutes', '4 min');
    expect(sheet.good.moreHolds).toEqual([moreHolds[0], { celsius: 158, minutes: 4 }]);
    expect(textOf(sheet, entries, 'moreHolds.0.celsius')).toBe('156 °C');
    const wrong = typed(sheet, entries, 'moreHolds.0.celsius', '300 C');
    expect(troubles(wrong, entries)).toEqual({ 'moreHolds.0.celsius': expect.stringMatching(/110 °C to 165 °C/) });
    const left = replaced({ ...wrong, texts: { ...wrong.texts, massKg: '300 g' } }, { moreHolds: moreHolds.slice(1) });
    expect(left.texts).toEqual({ massKg: '300 g' });
  });

  it('is written out anew in another unit, unless it is wrong', () => {
    const sheet: Sheet<typeof defaultRequest> = { ...fresh, texts: { invertC: '130', roastC: 'hot' } };
    const anew = rewritten(sheet, entries, ['invertC', 'roastC']);
    expect(textOf(anew, aimEntries('F'), 'invertC')).toBe('266 °F');
    expect(textOf(anew, aimEntries('F'), 'roastC')).toBe('hot');
  });
});

function limitsOf(fields: ReturnType<typeof aimEntries>, field: string): string {
  return troubles(typed(fresh, fields, field, ''), fields)[field] ?? '';
}
