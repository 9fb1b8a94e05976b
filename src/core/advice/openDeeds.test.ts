import fc from 'fast-check';
import { expect, test } from 'vitest';
import { defaultKit } from '../pan/kit.ts';
import type { AlkaliPart, Step } from '../pan/steps.ts';
import type { Situation } from './candidates.ts';
import { limits } from './limits.ts';
import { openDeeds } from './openDeeds.ts';
import { atTheStart } from './progress.ts';

const part: AlkaliPart = { substance: 'sodiumHydroxide', alkaliKg: 0.0006, waterKg: 0.002 };
const plain = { alkali: [], waitS: 0, approachNotch: 4, holdNotch: 2 } as const;
const steps: Step[] = [
  { ...plain, kind: 'invert', bandC: [127, 133], end: { heldMinutes: 8 } },
  { ...plain, kind: 'brown', bandC: [137, 143], end: { heldMinutes: 8 }, alkali: [part, part], waitS: 30 },
  {
    ...plain,
    kind: 'letDown',
    bandC: [90, 150],
    end: { heldMinutes: 0 },
    letDown: { solids: 0.8, hotPortionKg: 0.002, coolPortionKg: 0.012 },
  },
];

function situation(stepIndex: number, temperatureC: number, more: Partial<Situation> = {}): Situation {
  const progress = { ...atTheStart, stepIndex, inBandSinceS: 900 };
  const now = { timeS: 1000, kit: defaultKit, steps, progress, notch: 2, temperatureC, highC: temperatureC + 1 };
  return { ...now, syrupKg: 0.42, solids: 0.93, ...more };
}

test('a part of alkali is open at 130 C when one is due, and closed above 135 C, in aluminium and before its wait is over', () => {
  expect(openDeeds(situation(1, 130)).alkali).toEqual({ open: true, deed: { kind: 'alkali', part } });
  expect(openDeeds(situation(0, 130)).alkali).toEqual({ open: false, because: 'nothing due' });
  expect(openDeeds(situation(1, 136)).alkali).toEqual({ open: false, because: 'alkali heat' });
  const kit = { ...defaultKit, pan: { ...defaultKit.pan, material: 'aluminium' as const } };
  expect(openDeeds(situation(1, 130, { kit })).alkali).toEqual({ open: false, because: 'alkali in this pan' });
  const progress = { ...atTheStart, stepIndex: 1, partsGiven: 1, lastPartS: 990 };
  expect(openDeeds(situation(1, 130, { progress })).alkali).toEqual({ open: false, because: 'wait', waitS: 20 });
});

test('water is closed below the band, and in letting down goes in as portions of the size for the temperature', () => {
  const progress = { ...atTheStart };
  expect(openDeeds(situation(0, 110, { progress })).spoonful).toEqual({ open: false, because: 'below the band' });
  expect(openDeeds(situation(0, 132)).spoonful.open).toBe(true);
  const hot = openDeeds(situation(2, 140, { notch: 0 })).portion;
  expect(hot).toMatchObject({ open: true, deed: { waterKg: 0.002 } });
  expect(openDeeds(situation(2, 100, { notch: 0 })).portion).toMatchObject({ open: true, deed: { waterKg: 0.012 } });
  expect(openDeeds(situation(2, 140)).portion).toEqual({ open: false, because: 'heat off first' });
});

test('near the roast limit nothing that heats or wets the pan is open, whatever else holds', () => {
  fc.assert(
    fc.property(
      fc.integer({ min: 0, max: 2 }),
      fc.double({ min: limits.roastTemperature.value, max: 190, noNaN: true }),
      fc.integer({ min: 0, max: 9 }),
      (stepIndex, temperatureC, notch) => {
        const now = openDeeds(situation(stepIndex, temperatureC, { notch }));
        for (const name of ['spoonful', 'half', 'portion', 'raise', 'alkali'] as const) {
          expect(now[name].open, name).toBe(false);
        }
        expect(now.off.open).toBe(notch > 0);
      },
    ),
  );
});

test('one may go on to the next step at any time, and pour in the last alone', () => {
  expect(openDeeds(situation(0, 128)).step).toEqual({ open: true, deed: { kind: 'step', index: 1 } });
  expect(openDeeds(situation(0, 128)).pour.open).toBe(false);
  expect(openDeeds(situation(2, 128)).pour).toEqual({ open: true, deed: { kind: 'pour' } });
});
