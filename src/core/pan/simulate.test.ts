import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { dryEnthalpyJPerKg } from '../matter/heatCapacity.ts';
import { liquidEnthalpyJPerKg } from '../matter/water.ts';
import { normalNumbers } from '../reactions/normal.ts';
import { amount, amountMassKg } from '../reactions/rates.ts';
import type { Course } from './course.ts';
import { defaultKit, type Kit } from './kit.ts';
import { centralValues, drawnValues } from './model.ts';
import { type PreparedKit, prepareKit } from './preparedKit.ts';
import { simulate } from './simulate.ts';
import { contentsKg, dissolvedKg, place, stateSize } from './state.ts';
import type { AlkaliPart, Step } from './steps.ts';

const prepared = prepareKit(defaultKit);
const plain = { alkali: [], waitS: 0 } as const;
const part: AlkaliPart = { substance: 'sodiumHydroxide', alkaliKg: 0.0007, waterKg: 0.0024 };

/** Dissolve, climb, invert, brown with alkali, roast: dial settings suit the default kit. */
function recipe(sucroseKg: number, minutes: readonly [number, number, number], alkali: AlkaliPart = part) {
  const steps: Step[] = [
    { ...plain, kind: 'dissolve', bandC: [20, 106], end: { reachedC: 106 }, approachNotch: 6, holdNotch: 1 },
    { ...plain, kind: 'climb', bandC: [106, 127], end: { reachedC: 127 }, approachNotch: 5, holdNotch: 1 },
    { ...plain, kind: 'invert', bandC: [127, 133], end: { heldMinutes: minutes[0] }, approachNotch: 3, holdNotch: 2 },
    {
      kind: 'brown',
      bandC: [137, 143],
      end: { heldMinutes: minutes[1] },
      approachNotch: 3,
      holdNotch: 2,
      alkali: [alkali, alkali, alkali],
      waitS: 30,
    },
    { ...plain, kind: 'roast', bandC: [152, 158], end: { heldMinutes: minutes[2] }, approachNotch: 3, holdNotch: 2 },
  ];
  const charge = { sucroseKg, waterKg: 0.33 * sucroseKg, maltExtractKg: 0.008 * sucroseKg, citricAcidKg: 0 };
  return { charge, steps };
}

const kits: Kit[] = [
  defaultKit,
  { ...defaultKit, stove: { kind: 'gas', ratedPowerW: 2600, notches: 6 }, altitudeM: 900 },
  { ...defaultKit, stove: { kind: 'induction', ratedPowerW: 2000, notches: 14 }, roomC: 10 },
];
const preparedKits = kits.map(prepareKit);

/** Water and alkali that deeds brought in, kg and J above 0 C. */
function broughtIn(course: Course, { kit }: PreparedKit, spoonFactor: number) {
  let mass = 0;
  let heat = 0;
  for (const { deed } of course.deeds) {
    if (deed.kind === 'water') {
      const kg = deed.waterKg * (deed.spoonfuls > 0 ? spoonFactor : 1);
      mass += kg;
      heat += kg * liquidEnthalpyJPerKg(deed.spoonfuls > 0 ? 1 : kit.roomC);
    } else if (deed.kind === 'alkali') {
      const { alkaliKg, waterKg } = deed.part;
      mass += alkaliKg + waterKg;
      heat += alkaliKg * dryEnthalpyJPerKg(kit.roomC) + waterKg * liquidEnthalpyJPerKg(kit.roomC);
    }
  }
  return { mass, heat };
}

/** Enthalpy of the pan's contents recomputed from temperature and composition, J. */
function enthalpyJ(y: Float64Array, temperatureC: number): number {
  const solids = dissolvedKg(y) + y[place.crystals] * amountMassKg[amount.sucrose];
  return y[place.waterKg] * liquidEnthalpyJPerKg(temperatureC) + solids * dryEnthalpyJPerKg(temperatureC);
}

describe('every simulated cook', () => {
  const anyCook = fc.record({
    seed: fc.integer({ min: 1, max: 1e6 }),
    kit: fc.constantFrom(0, 1, 2),
    sucroseKg: fc.double({ min: 0.2, max: 0.9, noNaN: true }),
    minutes: fc.tuple(
      fc.integer({ min: 0, max: 60 }),
      fc.integer({ min: 0, max: 40 }),
      fc.integer({ min: 0, max: 15 }),
    ),
    lime: fc.boolean(),
  });

  test('keeps mass, energy and charge to 1e-6, whatever kit, parameters and steps', () => {
    fc.assert(
      fc.property(anyCook, ({ seed, kit, sucroseKg, minutes, lime }) => {
        const where = preparedKits[kit];
        const values = drawnValues(where.kit, normalNumbers(seed));
        const alkali = lime ? { ...part, substance: 'calciumHydroxide' as const } : part;
        const course = simulate(recipe(sucroseKg, minutes, alkali), where, values, {
          everyS: 5,
          normal: normalNumbers(seed + 1),
        });
        const { states } = course;
        const first = Float64Array.from(states, (column) => column[0]);
        const last = course.last;
        const row = course.timeS.length - 1;
        const brought = broughtIn(course, where, values.spoonFactor);

        const massOff = contentsKg(last) + last[place.steamKg] - contentsKg(first) - brought.mass;
        expect(Math.abs(massOff) / contentsKg(first)).toBeLessThan(1e-6);

        // Heat in, less losses and steam, plus reactions, is what contents and pan have gained.
        const gained =
          last[place.enthalpyJ] -
          first[place.enthalpyJ] -
          brought.heat +
          where.panJPerK * (last[place.panC] - first[place.panC]);
        const balance = last[place.heatInJ] - last[place.lostJ] - last[place.steamJ] + last[place.reactionJ] - gained;
        expect(Math.abs(balance) / last[place.heatInJ]).toBeLessThan(1e-6);

        // The heat content is that of the temperature shown, by the property functions themselves.
        const y = Float64Array.from({ length: stateSize }, (_, i) => states[i][row]);
        expect(Math.abs(enthalpyJ(y, course.temperatureC[row]) / y[place.enthalpyJ] - 1)).toBeLessThan(2e-4);

        // Alkali given is alkali released or waiting.
        const given = course.deeds.reduce(
          (sum, { deed }) =>
            sum +
            (deed.kind !== 'alkali' ? 0 : lime ? (2 * deed.part.alkaliKg) / 0.074092 : deed.part.alkaliKg / 0.039997),
          first[place.base],
        );
        const found = last[place.base] + last[place.caustic] + last[place.lime];
        expect(Math.abs(found / given - 1)).toBeLessThan(1e-6);

        for (const column of [...states, course.temperatureC, course.ph]) {
          for (const value of column) if (!Number.isFinite(value)) throw new Error('not a number');
        }
      }),
      { numRuns: 40 },
    );
  });

  test('is poured, and keeps amine, whatever the parameters', () => {
    for (let seed = 1; seed <= 60; seed++) {
      const values = drawnValues(defaultKit, normalNumbers(seed));
      const course = simulate(recipe(0.4, [30, 20, 5]), prepared, values, { everyS: 60, normal: normalNumbers(-seed) });
      expect(course.ending, `seed ${seed}`).toBe('poured');
      const amine = (y: Float64Array) => y[place.amine] + y[place.amadori] + y[place.prepigment] + y[place.boundAmine];
      expect(amine(course.last) / (values.amineContent * 0.0032)).toBeCloseTo(1, 6);
    }
  });
});

test('halving the tolerance tenfold moves temperature, water and pigment by less than 1e-4 of their size', () => {
  // Without spoonfuls and alkali: a person's acts would move with the rounding.
  const quiet = { charge: recipe(0.5, [0, 0, 0]).charge, steps: recipe(0.5, [0, 0, 0]).steps.slice(0, 2) };
  const values = centralValues(defaultKit);
  const usual = simulate(quiet, prepared, values);
  const tight = simulate(quiet, prepared, values, { tolerance: 1e-8 });
  const rows = Math.min(usual.timeS.length, tight.timeS.length);
  for (let i = 0; i < rows; i += 10) {
    expect(Math.abs(usual.temperatureC[i] / tight.temperatureC[i] - 1), `${i} s`).toBeLessThan(1e-4);
    expect(Math.abs(usual.states[place.waterKg][i] / tight.states[place.waterKg][i] - 1)).toBeLessThan(1e-4);
  }
});

test('water alone heats as its heat capacity demands', () => {
  // 1 kg of water with a trace of sugar on the ring: below the boil, heat in = heat content + losses + steam.
  const charge = { sucroseKg: 0.001, waterKg: 1, maltExtractKg: 0, citricAcidKg: 0 };
  const steps: Step[] = [
    { ...plain, kind: 'dissolve', bandC: [20, 60], end: { reachedC: 60 }, approachNotch: 9, holdNotch: 9 },
  ];
  const values = { ...centralValues(defaultKit), stoveLagS: 1, thermometerLagS: 0.5 };
  const course = simulate({ charge, steps }, prepared, values);
  // 1800 W x 0.65 = 1170 W into 1 kg x 4.18 kJ/K + 0.9 kg x 0.5 kJ/K, losses some 3 %: 39 K in about 160 s.
  const seconds = course.timeS.length - 1;
  expect(seconds).toBeGreaterThan(155);
  expect(seconds).toBeLessThan(180);
});

test('alkali comes in parts with a wait between, and each part is there at once', () => {
  const course = simulate(recipe(0.4, [5, 5, 0]), prepared, centralValues(defaultKit));
  const parts = course.deeds.filter(({ deed }) => deed.kind === 'alkali');
  expect(parts).toHaveLength(3);
  expect(parts[1].timeS - parts[0].timeS).toBeCloseTo(30, 3);
  const before = Math.floor(parts[0].timeS);
  const minerals = course.states[place.mineralKg];
  expect(minerals[before + 1] - minerals[before]).toBeCloseTo(part.alkaliKg, 9);
});

test('the person keeps the bands: at least 90 % of each hold within 1.5 C of them with central values', () => {
  const course = simulate(recipe(0.4, [30, 25, 7]), prepared, centralValues(defaultKit));
  const bands = { invert: [127, 133], brown: [137, 143], roast: [152, 158] } as const;
  for (const { kind, startS, endS } of course.steps) {
    if (!(kind in bands)) continue;
    const [low, high] = bands[kind as keyof typeof bands];
    const hold = course.readingC.slice(Math.ceil(startS), Math.floor(endS));
    const from = hold.findIndex((t) => t >= low);
    const inside = hold.slice(from).filter((t) => t >= low - 1.5 && t <= high + 1.5).length;
    expect(inside / (hold.length - from), kind).toBeGreaterThan(0.9);
  }
});
