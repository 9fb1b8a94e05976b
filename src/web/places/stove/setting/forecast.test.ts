import { expect, it } from 'vitest';
import type { Poured } from '../../../../core/lot/yield.ts';
import { defaultKit } from '../../../../core/pan/kit.ts';
import { forecastOf } from './forecast.ts';

const at = (mid: number) => ({ low: mid, mid, high: mid });
const tray = { widthCm: 20, lengthCm: 30, base: 'insulated' } as const;

function pouredWith(solids: number, glassC: number, temperatureC = 152): Poured {
  const setting = { glassC: at(glassC), breaksDry: 1, turnsSticky: 0, staysSticky: 0 };
  const colour = { a430: at(8), ebc: at(200), srm: at(102), icumsa: at(9e4) };
  const shares = { solids: at(solids), waterShare: at(1 - solids), inverted: at(0.3) };
  return { massKg: at(0.4), ...shares, ...colour, temperatureC: at(temperatureC), setting };
}

const cast = (glassC: number) => {
  const forecast = forecastOf({ poured: pouredWith(0.98, glassC), form: 'hard', kit: defaultKit, tray });
  if (forecast.kind === 'none') throw new Error(forecast.because);
  return { ...forecast, breaks: forecast.milestones[2] };
};

it('a dry candy breaks in the room and needs no freezer', () => {
  const { breaks, freezer } = cast(51);
  expect(breaks?.minutes?.mid).toBeGreaterThan(10);
  expect(freezer).toBeUndefined();
});

it('a soft one is sent to the freezer, and one that no freezer hardens is told so', () => {
  const soft = cast(25);
  expect(soft.breaks).toMatchObject({ minutes: undefined, otherwise: 'Not in this room' });
  expect(soft.freezer?.mid).toBeGreaterThan(1);
  const never = cast(-12);
  expect(never.breaks).toMatchObject({ minutes: undefined, otherwise: 'Never' });
  expect(never.freezer).toBeUndefined();
});

it('a syrup cools in its pan and has no tray', () => {
  const forecast = forecastOf({ poured: pouredWith(0.8, -60, 108), form: 'syrup', kit: defaultKit, tray });
  expect(forecast).toMatchObject({ kind: 'forecast', thicknessM: undefined });
  expect(forecast.kind === 'forecast' && forecast.milestones).toHaveLength(1);
});

it('gives no forecast of what it has no ground for, and says why', () => {
  const hotRoom = { ...defaultKit, roomC: 41 };
  const forecast = forecastOf({ poured: pouredWith(0.98, 51), form: 'hard', kit: hotRoom, tray });
  expect(forecast).toMatchObject({ kind: 'none', because: expect.stringMatching(/room temperature/) });
});
