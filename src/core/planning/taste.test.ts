import { expect, test } from 'vitest';
import { place, stateSize } from '../pan/state.ts';
import { createExposureMeter, tasteOf, unexposed } from './taste.ts';

const values = { prepigmentShare: 0.5, sugarPerMelanoidin: 1.5 };
const plain = { exposure: unexposed, sucroseKg: 1, a420: 0, mineralGPerKg: 0 };

test('a sugar that has been through nothing tastes of nothing', () => {
  expect(tasteOf(plain)).toEqual({ fruit: 0, toffee: 0, roast: 0, burnt: 0, alkali: 0 });
});

test('10 minutes at 155 C are 100 K min of roast, and none of burnt; at 165 C 50 K min of burnt', () => {
  const y = new Float64Array(stateSize);
  const at = (temperatureC: number) => {
    const meter = createExposureMeter(values, unexposed);
    for (let s = 0; s <= 600; s += 60) meter.take(s, y, temperatureC);
    return meter.exposure;
  };
  expect(at(155).roastKMin).toBeCloseTo(100, 9);
  expect(at(155).burntKMin).toBe(0);
  expect(at(165).burntKMin).toBeCloseTo(50, 9);
  // exp(130000 / 8.314 x (1/428.15 - 1/438.15)) = 2.30: 20 K x 10 min x 2.30.
  expect(at(165).roastKMin).toBeCloseTo(200 * 2.301, 0);
  expect(at(140).roastKMin).toBe(0);
});

test('fruit counts Amadori compound gone in its window, by the share that turns to pigment', () => {
  const gone = (temperatureC: number) => {
    const meter = createExposureMeter(values, unexposed);
    const y = new Float64Array(stateSize);
    meter.take(0, y, temperatureC);
    y[place.prepigment] = 0.0004;
    y[place.boundAmine] = 0.0001;
    meter.take(60, y, temperatureC);
    return meter.exposure.fruitMol;
  };
  // 0.5 mmol on the way to pigment is half of what broke down.
  expect(gone(130)).toBeCloseTo(0.001, 5);
  expect(gone(160)).toBeLessThan(1e-5);
  expect(gone(95)).toBeLessThan(1e-5);
});

test('alkali is tasted fully at 200 mg/L of its metal in a beer with 40 g/L: 5 g/kg', () => {
  expect(tasteOf({ ...plain, mineralGPerKg: 5 }).alkali).toBeCloseTo(10, 9);
  expect(tasteOf({ ...plain, mineralGPerKg: 1.5 }).alkali).toBeCloseTo(3, 9);
});

test('every index grows with its cause and stays within 0 to 10', () => {
  for (const [name, exposure] of [
    ['fruit', { fruitMol: 1 }],
    ['toffee', { toffeeMol: 1 }],
    ['roast', { roastKMin: 1 }],
    ['burnt', { burntKMin: 1 }],
  ] as const) {
    let before = -1;
    for (const scale of [0, 1e-3, 0.1, 5, 100, 1e5]) {
      const scaled = Object.fromEntries(Object.entries(exposure).map(([key, value]) => [key, value * scale]));
      const index = tasteOf({ ...plain, exposure: { ...unexposed, ...scaled } })[name];
      expect(index).toBeGreaterThanOrEqual(before);
      expect(index).toBeLessThanOrEqual(10);
      before = index;
    }
    expect(before).toBe(10);
  }
});
