import fc from 'fast-check';
import { expect, test } from 'vitest';
import { arrhenius } from './arrhenius.ts';
import { normalNumbers } from './normal.ts';
import { valuesOf } from './parameter.ts';
import { type ReactionParameter, reactionParameters } from './parameters.ts';
import { amount, amountCount, createRates, lastWater, roastShare, type Surroundings } from './rates.ts';
import { type Formula, type Species, scheme, species } from './scheme.ts';

const drawn = fc.integer({ min: 0, max: 1e6 }).map((seed) => valuesOf(reactionParameters, normalNumbers(seed)));

test('every declared reaction keeps its atoms, whatever the parameters', () => {
  fc.assert(
    fc.property(drawn, (p) => {
      for (const reaction of scheme) {
        const sum = { c: 0, h: 0, o: 0, amine: 0 };
        for (const [name, count] of Object.entries(reaction.change(p))) {
          if (name === 'acid') continue;
          const formula: Formula = species[name as Species];
          sum.c += count * formula.c;
          sum.h += count * formula.h;
          sum.o += count * formula.o;
          sum.amine += count * (formula.amine ?? 0);
        }
        for (const left of Object.values(sum)) expect(Math.abs(left), reaction.name).toBeLessThan(1e-12);
      }
    }),
  );
});

/** The declared laws, written the slow way: mol/s of each reaction. */
function lawRates(p: Record<ReactionParameter, number>, y: Float64Array, s: Surroundings, ph: number) {
  const litres = s.syrupKg / 1.33;
  const t = s.temperatureC;
  const k = (rate: number, energy: number, reference: number) => arrhenius(rate, energy, reference, t) / 60;
  const oh = 10 ** (p.hydroxideOrder * (ph - 6.8));
  const acid = 10 ** -ph * (s.waterKg / litres) ** p.waterOrder;
  const decay = (k120: number) => oh * k(k120, p.decayEnergy, 120);
  const roast = p.roastMultiplier ** roastShare(t) * 10 ** (p.pigmentPhOrder * (ph - 6.8));
  const fragments = y[amount.fragments];
  const condensation =
    10 ** (p.amadoriPhOrder * (Math.min(ph, 8.5) - 6.8)) *
    k(1000 * p.amadoriRate, p.amadoriEnergy, 120) *
    y[amount.amine];
  const amadori = k(p.amadoriDecay, p.amadoriDecayEnergy, 120) * y[amount.amadori];
  return new Map<string, number>([
    [
      'inversion',
      (s.waterKg / litres / (s.waterKg / litres + lastWater)) *
        (acid * k(p.inversionRate130, p.inversionEnergy, 130) + k(p.scissionRate150, p.scissionEnergy, 150)) *
        y[amount.sucrose],
    ],
    [
      'isomerisation',
      oh *
        (k(p.glucoseToFructose, p.isomerEnergy, 120) * y[amount.glucose] -
          k(p.fructoseToGlucose, p.isomerEnergy, 120) * y[amount.fructose]),
    ],
    [
      'decay of fructose',
      (decay(p.fructoseDecay) + k(p.neutralDecay140, p.neutralDecayEnergy, 140)) * y[amount.fructose],
    ],
    ['decay of glucose', decay(p.glucoseDecay) * y[amount.glucose]],
    ['fading', k(p.fragmentFade, p.fragmentFadeEnergy, 120) * fragments],
    [
      'caramel pigment',
      roast *
        (k(p.pigmentFirst, p.pigmentEnergy, 120) * fragments +
          (2 * k(p.pigmentSecond, p.pigmentEnergy, 120) * fragments ** 2) / litres),
    ],
    ['Amadori from glucose', (condensation * y[amount.glucose]) / litres],
    ['Amadori from fructose', (condensation * y[amount.fructose]) / litres],
    ['Amadori to pre-pigment', p.prepigmentShare * amadori],
    ['Amadori to fragments', (1 - p.prepigmentShare) * amadori],
    ['melanoidin', k(p.prepigmentRate, p.prepigmentEnergy, 120) * y[amount.prepigment]],
    ['dehydration to HMF', ((k(0.3 * Math.exp(1.44), 127, 107.85) * 10 ** -ph) / 55.5) * y[amount.fructose]],
  ]);
}

test('the fast rates follow the declared scheme within 0.01 % from 100 to 165 C', () => {
  const amounts = fc.array(fc.double({ min: 1e-4, max: 2, noNaN: true }), {
    minLength: amountCount,
    maxLength: amountCount,
  });
  const surroundings = fc.record({
    temperatureC: fc.double({ min: 100, max: 165, noNaN: true }),
    syrupKg: fc.double({ min: 0.5, max: 2, noNaN: true }),
    waterKg: fc.double({ min: 0.01, max: 0.3, noNaN: true }),
    base: fc.double({ min: 0, max: 0.3, noNaN: true }),
    citricMol: fc.constantFrom(0, 0.01),
    maltKg: fc.double({ min: 0, max: 0.05, noNaN: true }),
  });
  fc.assert(
    fc.property(drawn, amounts, surroundings, (p, list, around) => {
      const y = Float64Array.from(list);
      const dy = new Float64Array(amountCount);
      const flow = { water: 0, inverted: 0 };
      const ph = createRates(p).derivatives(y, around, dy, flow);
      const expected = new Float64Array(amountCount);
      let water = 0;
      let size = 0;
      const laws = lawRates(p, y, around, ph);
      for (const reaction of scheme) {
        const rate = laws.get(reaction.name) ?? Number.NaN;
        for (const [name, count] of Object.entries(reaction.change(p))) {
          if (name === 'water') water += rate * count;
          else expected[amount[name as keyof typeof amount]] += rate * count;
          size = Math.max(size, Math.abs(rate * count));
        }
      }
      for (let i = 0; i < amountCount; i++) expect(Math.abs(dy[i] - expected[i])).toBeLessThanOrEqual(1e-4 * size);
      expect(Math.abs(flow.water - water)).toBeLessThanOrEqual(1e-4 * size);
    }),
    { numRuns: 100 },
  );
});
