import { describe, expect, it } from 'vitest';
import { newLotSchema } from '../../../api/lot.ts';
import { noteSchema } from '../../../api/lotNote.ts';
import { limits } from '../../../core/advice/limits.ts';
import { keepingOf, standings } from '../../../core/lot/keep/keeping.ts';
import { letDown } from '../../../core/lot/keep/letDown.ts';
import { beforehand } from '../../../core/lot/known.ts';
import { airSays, packSays, soonestSays, standingSays } from './keep/keepWords.ts';
import { orderSteps } from './keep/orderSteps.ts';
import { fitted } from './label/fitted.ts';
import { methodForms } from './measure/methods.ts';
import { resultWords } from './measure/resultWords.ts';
import { ageOf } from './shown.ts';
import { alkaliOf, toldOfAlkali } from './told/alkali.ts';
import { firstTold, lotOfTold } from './told/told.ts';

const at = '2030-03-02T10:00:00.000Z';
const lot = lotOfTold(firstTold, at);

describe('ways of measuring', () => {
  it.each(Object.entries(methodForms))(
    '%s begins with a reading that the server takes and that gives something',
    (method, form) => {
      expect(form.start.method).toBe(method);
      expect(noteSchema.safeParse({ kind: 'measured', at, reading: form.start }).success).toBe(true);
      expect(resultWords(form.start, beforehand({ ...lot, weighedKg: null })).kind).toBe('says');
      for (const entry of Object.values(form.entries('C'))) {
        // What a field shows is read back as the same.
        expect(entry.show(entry.put(form.start, entry.show(form.start)))).toBe(entry.show(form.start));
      }
    },
  );
});

it('a sugar that is written in is a lot that the server takes, its alkali as told', () => {
  expect(newLotSchema.safeParse(lot).success).toBe(true);
  expect(newLotSchema.safeParse(lotOfTold({ ...firstTold, form: 'syrup', water: 0.5, inverted: 1 }, at)).success).toBe(
    true,
  );
  expect(alkaliOf(firstTold)).toBeNull();
  for (const alkali of ['unknown', 'none', 'calciumHydroxide'] as const) {
    const given = alkaliOf({ alkali, alkaliGPerKg: 5 });
    expect(alkaliOf(toldOfAlkali(given))).toEqual(given);
  }
});

it('has words for every sugar in every room, and a bound only where water is drawn', () => {
  for (const water of [0.005, 0.02, 0.04, 0.08, 0.2])
    for (const humidity of [0.05, 0.3, 0.6, 0.95]) {
      const room = { roomC: 22, humidity };
      const sugar = { waterShare: around(water), inverted: around(0.5) };
      const keeping = keepingOf(sugar, room);
      expect(standings).toContain(keeping.standing);
      for (const words of [standingSays(keeping), airSays(keeping, room), packSays(keeping)]) {
        expect(words).toMatch(/^[A-Z].*\.$/);
        expect(words).not.toMatch(/NaN|undefined|Infinity/);
      }
      const soonest = soonestSays(keeping, room);
      if (!keeping.draws) expect(soonest).toBeUndefined();
      else expect(soonest ?? '').not.toMatch(/NaN|Infinity/);
    }
});

it('names the portion of safety whenever water goes onto hot sugar', () => {
  for (const sugarC of [85, 110, 121, 150, 200]) {
    const told = letDown(
      { waterShare: around(0.03), inverted: around(0.5) },
      { massKg: 0.4, brix: 75, sugarC, keptC: 20 },
    );
    const words = orderSteps(told, 'C').join(' ');
    expect(words).toMatch(/at most [\d.]+ g/);
    if (sugarC > limits.portionHotFrom.value) expect(words).toMatch(/wait until it is below 120 °C/);
  }
});

it('cuts a label’s text to its width, at blanks where it can', () => {
  expect(fitted('Plum shards', 60, 5, 1)).toEqual(['Plum shards']);
  const lines = fitted('A very long name of a sugar that nobody would write', 50, 5, 2);
  expect(lines).toHaveLength(2);
  expect(lines[1]).toMatch(/…$/);
  for (const line of lines) expect(line.length).toBeLessThanOrEqual(50 / (0.56 * 5));
  expect(fitted('x'.repeat(80), 50, 5, 1)[0]).toMatch(/^x+…$/);
});

it('tells an age in words a cook would use', () => {
  const ago = (days: number) => ageOf(new Date(Date.parse(at) - days * 86_400_000).toISOString(), new Date(at));
  expect([0, 1, 12, 90, 800].map(ago)).toEqual([
    'made today',
    '1 day old',
    '12 days old',
    '2 months old',
    '2 years old',
  ]);
});

function around(mid: number) {
  return { low: 0.8 * mid, mid, high: Math.min(1, 1.2 * mid) };
}
