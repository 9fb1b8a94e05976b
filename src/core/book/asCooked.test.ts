import { expect, it, vi } from 'vitest';
import { cookedLog } from '../../../test/cookedLog.ts';
import { begunBody, sampleDevice } from '../../../test/sampleCook.ts';
import { foldCook } from '../log/fold.ts';
import { defaultKit } from '../pan/kit.ts';
import { defaultRequest, type PlanRequest } from '../planning/request.ts';
import { asCooked } from './asCooked.ts';
import { differencesOf, factsOf } from './differences.ts';
import { doingsOf } from './doings.ts';
import { browningAtC, dosesOf } from './doses.ts';

// A cook is simulated whole.
vi.setConfig({ testTimeout: 30_000 });

it('tells the recipe of a log: what was held, as long as it was, and all the alkali', () => {
  const { events, begun } = cookedLog(defaultKit, 7);
  const cook = asCooked(foldCook(events));
  expect(cook?.charge).toEqual(begun.amounts.charge);
  expect(cook?.steps.map(({ kind }) => kind)).toEqual(begun.steps.map(({ kind }) => kind));
  for (const [i, step] of begun.steps.entries()) {
    const found = cook?.steps[i];
    if (!('heldMinutes' in step.end) || !found || !('heldMinutes' in found.end)) continue;
    // A reading each 10 s with 0.4 C of noise finds the band's edge half a minute early or late.
    expect(Math.abs(found.end.heldMinutes - step.end.heldMinutes)).toBeLessThan(1.5);
  }
  const given = cook?.steps.flatMap(({ alkali }) => alkali).reduce((sum, { alkaliKg }) => sum + alkaliKg, 0);
  expect(given).toBeCloseTo(begun.amounts.alkali?.pureKg ?? 0, 9);
});

it('has nothing to say of a log without readings, or without a beginning', () => {
  const device = sampleDevice('a');
  expect(asCooked(foldCook([device.make('begun', begunBody, 0), device.make('poured', {}, 60)]))).toBeUndefined();
  expect(asCooked(foldCook([device.make('heat', { notch: 3 }, 0)]))).toBeUndefined();
});

it('a minute at 140 C is worth a minute of browning, and at 150 C what Arrhenius gives for 92 kJ/mol', () => {
  const at = (celsius: number) => {
    const device = sampleDevice('a');
    const begun = device.make('begun', begunBody, 0);
    const readings = Array.from({ length: 61 }, (_, i) =>
      device.make('reading', { probe: 'pan', valueC: celsius, quality: 'fresh', unit: 'Cel', raw: celsius }, 10 * i),
    );
    const log = [begun, ...readings, device.make('poured', {}, 600)];
    return dosesOf(doingsOf(foldCook(log)))[0].browningMinutes;
  };
  expect(at(browningAtC)).toBeCloseTo(10, 6);
  const faster = Math.exp((92e3 / 8.314462618) * (1 / 413.15 - 1 / 423.15));
  expect(at(150)).toBeCloseTo(10 * faster, 6);
});

it('a long gap between readings counts for nothing: nobody knows how hot it was', () => {
  const device = sampleDevice('a');
  const read = (atS: number) =>
    device.make('reading', { probe: 'pan', valueC: 140, quality: 'byHand', unit: 'Cel', raw: 140 }, atS);
  const log = [device.make('begun', begunBody, 0), read(0), read(240), read(1200), device.make('poured', {}, 1200)];
  expect(dosesOf(doingsOf(foldCook(log)))[0].browningMinutes).toBeCloseTo(4, 6);
});

it('a request without its name makes no difference', () => {
  const { events } = cookedLog(defaultKit, 7, 'live', 'b', { request: { ...defaultRequest, name: 'Another' } });
  const { events: others } = cookedLog(defaultKit, 7);
  expect(asCooked(foldCook(events))?.steps).toEqual(asCooked(foldCook(others))?.steps);
});

it('tells steps of one kind apart, and puts them in their order', () => {
  const request = {
    ...defaultRequest,
    massKg: 0.2,
    route: 'bright',
    invertMinutes: 4,
    brownMinutes: 4,
    moreHolds: [{ celsius: 144, minutes: 6 }],
  } as const;
  const facts = (cook: string, asked: PlanRequest) =>
    factsOf(foldCook(cookedLog(defaultKit, 7, 'live', cook, { request: asked }).events), null);
  const rows = differencesOf([facts('a', { ...request, moreHolds: undefined }), facts('b', request)]);
  const browns = rows.filter(({ what }) => what.startsWith('Brown')).slice(0, 4);
  expect(browns.map(({ what }) => what)).toEqual(['Brown, length', 'Brown, mean', 'Brown 2, length', 'Brown 2, mean']);
  expect(browns[2].values[0]).toBeNull();
  expect(browns[2].values[1]).toBeGreaterThan(5);
  expect(browns[3].values[1]).toBeGreaterThan(141);
});
