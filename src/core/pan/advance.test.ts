import { expect, test } from 'vitest';
import { normalNumbers } from '../reactions/normal.ts';
import { advance } from './advance.ts';
import { filledPan, perform } from './deeds.ts';
import { defaultKit } from './kit.ts';
import { drawnValues } from './model.ts';
import { createPan } from './physics.ts';
import { prepareKit } from './preparedKit.ts';
import { place } from './state.ts';

const prepared = prepareKit(defaultKit);
const charge = { sucroseKg: 0.4, waterKg: 0.13, maltExtractKg: 0.0032, citricAcidKg: 0 };

/** A drawn pan heated for some minutes, carried on a row at a time. */
function heated(seed: number, notch: number, rowS: number, rows: number, tolerance: number, remember: boolean) {
  const values = drawnValues(defaultKit, normalNumbers(seed));
  const pan = createPan(prepared, values);
  const y = filledPan(charge, defaultKit, values);
  perform({ kind: 'heat', notch }, y, pan, defaultKit);
  let stepS: number | undefined;
  for (let i = 0; i < rows; i++) {
    const nextS = advance(pan, y, rowS, tolerance, stepS);
    if (remember) stepS = nextS;
  }
  return { y, temperatureC: pan.view.temperatureC };
}

test('a stretch in rows, each begun with the step that the last one ended with, comes within 0.02 C and 0.02 g of a tight one', () => {
  let worstC = 0;
  let worstKg = 0;
  for (let seed = 1; seed <= 12; seed++) {
    const tight = heated(seed, 6, 900, 1, 1e-8, false);
    const inRows = heated(seed, 6, 15, 60, 3e-4, true);
    worstC = Math.max(worstC, Math.abs(inRows.temperatureC - tight.temperatureC));
    worstKg = Math.max(worstKg, Math.abs(inRows.y[place.waterKg] - tight.y[place.waterKg]));
  }
  console.log(`worst of 12 pans after 15 minutes: ${worstC.toFixed(4)} C, ${(1000 * worstKg).toFixed(4)} g of water`);
  // Ten times what was measured; a thermometer shows 0.1 C.
  expect(worstC).toBeLessThan(0.02);
  expect(worstKg).toBeLessThan(2e-5);
});

test('a pan forgotten on the ring until it is dry and burnt stays in numbers', () => {
  for (let seed = 1; seed <= 12; seed++) {
    const { y, temperatureC } = heated(seed, 5, 10, 300, 3e-4, false);
    expect(y.every(Number.isFinite)).toBe(true);
    expect(temperatureC).toBeLessThanOrEqual(200);
  }
});
