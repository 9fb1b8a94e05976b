import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { boilingPointC, solidsAtBoil } from '../matter/boiling.ts';
import { dryEnthalpyJPerKg } from '../matter/heatCapacity.ts';
import { partlyInverted, pureSucrose } from '../matter/sugars.ts';
import { liquidEnthalpyJPerKg } from '../matter/water.ts';
import { amount, amountMassKg } from '../reactions/rates.ts';
import { addWater } from './deeds.ts';
import { defaultKit } from './kit.ts';
import { centralValues } from './model.ts';
import { createPan } from './physics.ts';
import { prepareKit } from './preparedKit.ts';
import { createStepper } from './rosenbrock.ts';
import { type Spooning, spoonfulDropK } from './spoonful.ts';
import { place, stateSize } from './state.ts';

const atm = 101_325;
const teaspoonKg = 4.93e-3;
/** What follows the syrup of an 18 cm stainless pan of 0.9 kg. */
const panJPerK = 450;
const batchesKg = [0.35, 0.45, 0.55];

function dropped(batchKg: number, temperatureC: number, changes: Partial<Spooning> = {}) {
  const usual = { dry: pureSucrose, spoonKg: teaspoonKg, waterC: 1, pressurePa: atm, panJPerK: 0 };
  return spoonfulDropK({ ...usual, batchKg, temperatureC, ...changes });
}

describe('a teaspoon of ice-cold water in 350 to 550 g of boiling syrup', () => {
  test('cools it near 130 C by 2.2 to 3.9 C: practice (no source) says roughly 3 to 4', () => {
    const drops = batchesKg.flatMap((kg) => [dropped(kg, 130).dropK, dropped(kg, 130, { panJPerK }).dropK]);
    console.log('near 130 C:', drops.map((k) => k.toFixed(2)).join(', '));
    expect(Math.min(...drops)).toBeGreaterThan(2.2);
    expect(Math.max(...drops)).toBeLessThan(3.9);
    expect(dropped(0.4, 130).dropK).toBeGreaterThan(3);
  });

  test('near 147 C the equilibrium fall is about 1.45 times that, not twice as practice (no source) says', () => {
    for (const kg of batchesKg) {
      const ratio = dropped(kg, 147).dropK / dropped(kg, 130).dropK;
      expect(ratio).toBeGreaterThan(1.4);
      expect(ratio).toBeLessThan(1.55);
    }
  });

  test('near 147 C the 6 to 8 C of practice lie between the fall at equilibrium and that of water which flashes before it mixes', () => {
    for (const kg of batchesKg) {
      const { dropK, slopeOnlyK, allFlashedK } = dropped(kg, 147, { panJPerK });
      console.log(`${kg} kg at 147 C with the pan: ${dropK.toFixed(2)}, at most ${allFlashedK.toFixed(2)}`);
      expect(dropK).toBeLessThan(slopeOnlyK);
      expect(dropK).toBeLessThan(6);
      expect(allFlashedK).toBeGreaterThan(6);
    }
  });
});

const spoonings = fc.record({
  batchKg: fc.double({ min: 0.2, max: 3, noNaN: true }),
  temperatureC: fc.double({ min: 104, max: 152, noNaN: true }),
  invert: fc.double({ min: 0, max: 1, noNaN: true }),
  spoonKg: fc.double({ min: 0.001, max: 0.02, noNaN: true }),
  waterC: fc.double({ min: 0, max: 60, noNaN: true }),
  pressurePa: fc.double({ min: 80e3, max: 104e3, noNaN: true }),
  panJPerK: fc.double({ min: 0, max: 1000, noNaN: true }),
});

describe('any spoonful', () => {
  test('ends on the boiling curve, or below it with no water flashed; and never falls beyond the bound', () => {
    fc.assert(
      fc.property(spoonings, ({ invert, ...given }) => {
        const dry = partlyInverted(invert);
        const { batchKg, temperatureC, spoonKg, pressurePa } = given;
        const { dropK, flashedKg, allFlashedK } = spoonfulDropK({ ...given, dry });
        const dryKg = batchKg * solidsAtBoil(temperatureC, dry, pressurePa);
        const boilsC = boilingPointC(dryKg / (batchKg + spoonKg - flashedKg), dry, pressurePa);
        if (flashedKg > 0) expect(temperatureC - dropK).toBeCloseTo(boilsC, 6);
        else expect(temperatureC - dropK).toBeLessThanOrEqual(boilsC + 1e-6);
        expect(flashedKg).toBeLessThan(spoonKg);
        expect(dropK).toBeGreaterThan(0);
        expect(dropK).toBeLessThanOrEqual(allFlashedK + 1e-6);
      }),
      { numRuns: 60 },
    );
  });

  test('cools less in a heavier pan, whose heat turns more of it to steam', () => {
    const light = dropped(0.45, 140);
    const heavy = dropped(0.45, 140, { panJPerK });
    expect(heavy.dropK).toBeLessThan(light.dropK);
    expect(heavy.flashedKg).toBeGreaterThan(light.flashedKg);
  });

  test('is refused above 160 C, where no more water belongs in the pan', () => {
    expect(() => dropped(0.4, 161)).toThrow(RangeError);
  });
});

test.each([130, 147])('the simulated pan at %s C, left alone for 15 s, falls within 0.4 C of it', (temperatureC) => {
  const prepared = prepareKit({ ...defaultKit, altitudeM: 0 });
  // A pan that keeps its heat and follows the syrup at once, and whose surface dries by boiling alone.
  const values = {
    ...centralValues(prepared.kit),
    lossFactor: 1e-6,
    evaporationFactor: 1e-6,
    thinFilm: 1e5,
    thickFilm: 1e5,
  };
  const pan = createPan(prepared, values);
  const batchKg = 0.45;
  const solids = solidsAtBoil(temperatureC, pureSucrose, prepared.curve.pressurePa);
  const y = new Float64Array(stateSize);
  y[place.sucrose] = (batchKg * solids) / amountMassKg[amount.sucrose];
  y[place.waterKg] = batchKg * (1 - solids);
  y[place.enthalpyJ] =
    batchKg * (solids * dryEnthalpyJPerKg(temperatureC) + (1 - solids) * liquidEnthalpyJPerKg(temperatureC));
  y[place.panC] = temperatureC;
  y[place.tipC] = temperatureC;
  addWater(y, teaspoonKg, 1);

  const stepper = createStepper(pan, 1e-6);
  let state: Float64Array = y;
  for (let i = 0; i < 150; i++) {
    const next = new Float64Array(stateSize);
    stepper.step(state, derivativesOf(pan, state), 0.1, next);
    state = next;
  }
  derivativesOf(pan, state);
  const fallK = temperatureC - pan.view.temperatureC;
  const { dropK } = dropped(batchKg, temperatureC, {
    panJPerK: prepared.panJPerK,
    pressurePa: prepared.curve.pressurePa,
  });
  console.log(`simulated ${fallK.toFixed(2)}, at equilibrium ${dropK.toFixed(2)}`);
  expect(Math.abs(fallK - dropK)).toBeLessThan(0.4);
});

function derivativesOf(pan: ReturnType<typeof createPan>, y: Float64Array): Float64Array {
  const dy = new Float64Array(stateSize);
  pan.derivatives(y, dy);
  return dy;
}
