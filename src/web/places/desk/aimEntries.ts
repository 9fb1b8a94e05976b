/** The fields of the aim: what each is called, how it is typed, and its limits. */
import {
  type FurtherHold,
  furtherHoldRanges,
  mostFurtherHolds,
  type PlanRequest,
  requestRanges,
} from '../../../core/planning/request.ts';
import type { Entries, Entry } from '../../parts/entry.ts';
import { nameEntry, plainEntry, quantityEntry } from '../../parts/numberEntry.ts';
import type { TemperatureUnit } from '../../parts/temperature.ts';

type NumberField = keyof typeof requestRanges;

/** Label, limits and place of one number of the request. */
function number(field: NumberField, label: string, hint?: string) {
  return {
    label,
    ...(hint && { hint }),
    range: requestRanges[field],
    get: (request: PlanRequest) => request[field],
    set: (request: PlanRequest, value: number): PlanRequest => ({ ...request, [field]: value }),
  };
}

/** One number of a further hold. */
function further(name: keyof FurtherHold, at: number, label: string) {
  return {
    label,
    range: furtherHoldRanges[name],
    get: (request: PlanRequest) => request.moreHolds?.[at]?.[name] ?? 0,
    set: (request: PlanRequest, value: number): PlanRequest => ({
      ...request,
      moreHolds: request.moreHolds?.map((hold, i) => (i === at ? { ...hold, [name]: value } : hold)),
    }),
  };
}

/** Fields of the further holds, as many as there may be; those of holds that are not there are not shown. */
function furtherEntries(unit: TemperatureUnit): Entries<PlanRequest> {
  const each = Array.from({ length: mostFurtherHolds }, (_, at) => [
    [
      furtherField(at, 'celsius'),
      quantityEntry({ ...further('celsius', at, `Further hold ${at + 1} at`), dimension: 'temperature', unit }),
    ] as const,
    [
      furtherField(at, 'minutes'),
      quantityEntry({
        ...further('minutes', at, `Further hold ${at + 1} for`),
        dimension: 'duration',
        unit: 'min',
        scale: 60,
      }),
    ] as const,
  ]);
  return Object.fromEntries(each.flat());
}

export const furtherField = (at: number, name: keyof FurtherHold): string => `moreHolds.${at}.${name}`;

const minutes = (field: NumberField, label: string) =>
  quantityEntry({ ...number(field, label), dimension: 'duration', unit: 'min', scale: 60 });

export const temperatureFields = [
  ...['invertC', 'brownC', 'roastC'],
  ...Array.from({ length: mostFurtherHolds }, (_, at) => furtherField(at, 'celsius')),
];

export function aimEntries(
  unit: TemperatureUnit,
): Entries<PlanRequest> & Record<NumberField | 'name', Entry<PlanRequest>> {
  const temperature = (field: NumberField, label: string) =>
    quantityEntry({ ...number(field, label), dimension: 'temperature', unit });
  return {
    name: nameEntry(
      'Name',
      (request) => request.name,
      (request, name) => ({ ...request, name }),
    ),
    massKg: quantityEntry({
      ...number('massKg', 'Finished sugar', 'in g, kg, oz or lb'),
      dimension: 'mass',
      unit: 'g',
    }),
    syrupSolids: plainEntry({ ...number('syrupSolids', 'Solids'), unit: '°Bx', scale: 100 }),
    alkaliGPerKg: plainEntry({ ...number('alkaliGPerKg', 'Dose', 'for each kg of sugar'), unit: 'g/kg' }),
    solutionStrength: quantityEntry({
      ...number('solutionStrength', 'Strength', 'by weight, in water'),
      dimension: 'fraction',
      unit: '%',
    }),
    acidGPerKg: plainEntry({ ...number('acidGPerKg', 'Citric acid', 'for each kg of sugar'), unit: 'g/kg' }),
    maltExtractGPerKg: plainEntry({
      ...number('maltExtractGPerKg', 'Dry malt extract', 'for each kg of sugar'),
      unit: 'g/kg',
    }),
    invertC: temperature('invertC', 'Invert at'),
    invertMinutes: minutes('invertMinutes', 'Invert for'),
    brownC: temperature('brownC', 'Brown at'),
    brownMinutes: minutes('brownMinutes', 'Brown for'),
    roastC: temperature('roastC', 'Roast at'),
    roastMinutes: minutes('roastMinutes', 'Roast for'),
    ...furtherEntries(unit),
  };
}
