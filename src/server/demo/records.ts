/** What the club made of its cooks, as the records that a person would have kept: lots with notes, glasses with tastings. */
import type { NewGlass } from '../../api/glass.ts';
import type { KeptLot } from '../../api/lot.ts';
import type { NewNote } from '../../api/lotNote.ts';
import type { NewTasting } from '../../api/tasting.ts';
import { usualPathCm, usualRest } from '../../core/beer/glass.ts';
import { specificFromRating } from '../../core/colour/rating.ts';
import { foldCook } from '../../core/log/fold.ts';
import { alkaliOfCook } from '../../core/lot/alkaliOfCook.ts';
import { lotOf } from '../../core/lot/lot.ts';
import { dilutionFor } from '../../core/lot/measure/dilution.ts';
import { type DemoBeerTasting, type DemoGlass, type DemoLot, dayMs, demoId, plans, prices } from './club.ts';
import type { DemoCooked } from './simulated.ts';

const weekMs = 7 * dayMs;
const timeText = (ms: number): string => new Date(ms).toISOString();

export function lotRecord(
  { cook, name, weightTimes }: DemoLot,
  { plan, begun, events, pouredMs, believed, truth }: DemoCooked,
): KeptLot {
  const { request } = plans[plan];
  const { id: _, ...lot } = lotOf({
    id: '',
    name,
    origin: 'cooked',
    cookId: demoId('cook', cook),
    planId: demoId('plan', plan),
    madeAt: timeText(pouredMs),
    form: request.form,
    weighedKg: rounded(truth.massKg.mid * weightTimes, 3),
    alkali: alkaliOfCook(begun, foldCook(events).deeds),
    poured: believed,
  });
  return lot;
}

/** A refractometer on the morning after, a photometer right after it, then what was tasted and taken. */
export function notesOf(lot: DemoLot, { pouredMs, truth }: DemoCooked): readonly NewNote[] {
  const dayLater = (days: number) => timeText(pouredMs + days * dayMs);
  const solids = 1 - truth.waterShare.mid;
  const specific430 = specificFromRating(truth.ebc.mid, 'tenPercentByWeight');
  const [sugarG, waterG] = [10, 40];
  const brix = ((100 * sugarG * solids) / (sugarG + waterG)) * lot.brixTimes;
  const range = { low: specific430, mid: specific430, high: specific430 };
  const dilution = dilutionFor({ specific430: range, solids, pathCm: 1, totalMl: 100, divisionG: 0.01 });
  const { absorbance, trouble, ...madeUp } = dilution;
  return [
    {
      kind: 'measured',
      at: dayLater(0.6),
      reading: { method: 'refractometer', sugarG, waterG, brix: rounded(brix, 1), temperatureC: 18, compensated: true },
    },
    {
      kind: 'measured',
      at: dayLater(0.62),
      reading: {
        ...{ method: 'absorbance', ...madeUp, wavelengthNm: 430, pathCm: 1 },
        absorbance: rounded(absorbance.mid * lot.absorbanceTimes, 3),
      },
    },
    ...lot.tastes.map(({ daysLater, ...taste }): NewNote => ({ kind: 'tasted', at: dayLater(daysLater), ...taste })),
    ...lot.taken.map(
      ({ daysLater, ...taken }): NewNote => ({ kind: 'stocked', at: dayLater(daysLater), how: 'took', ...taken }),
    ),
  ];
}

export function glassRecord(
  { name, lot, massKg, added, bottledDaysAgo, ...rest }: DemoGlass,
  alkali: KeptLot['alkali'],
  nowMs: number,
): NewGlass {
  const { volumeL, gravity, a430PerCm } = rest;
  const told = { alkali, fermentable: null, pricePerKg: null };
  return {
    name,
    rest: { ...usualRest, volumeL, gravity, a430PerCm },
    doses: [{ sugar: { kind: 'lot', lotId: demoId('lot', lot), ...told }, massKg, added }],
    kettleLossL: 0.5,
    pathCm: usualPathCm,
    boughtPricePerKg: prices.bought,
    bottledOn: bottledDaysAgo === null ? null : timeText(nowMs - bottledDaysAgo * dayMs).slice(0, 10),
  };
}

export function tastingRecord(
  { weeks, ...tasted }: DemoBeerTasting,
  bottledDaysAgo: number,
  nowMs: number,
): NewTasting {
  return { ...tasted, weeks, tastedAt: timeText(nowMs - bottledDaysAgo * dayMs + weeks * weekMs) };
}

function rounded(value: number, digits: number): number {
  return Number(value.toFixed(digits));
}
