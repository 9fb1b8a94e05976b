/** The fields of the aim: what each is called, how it is typed, and its limits. */
import {
  alkaliShares,
  type FurtherHold,
  furtherHoldRanges,
  mostFurtherHolds,
  optionalRanges,
  type PlanRequest,
  requestRanges,
  usualDissolveC,
} from '../../../core/planning/request.ts';
import { type Entries, type Entry, EntryError, type Sheet, typed } from '../../parts/entry.ts';
import { nameEntry, plainEntry, quantityEntry } from '../../parts/numberEntry.ts';
import type { TemperatureUnit } from '../../parts/temperature.ts';

type NumberField = keyof typeof requestRanges;
type AlkaliShare = 'alkaliActive' | 'alkaliCarbonate';

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

const otherShare = { alkaliActive: 'alkaliCarbonate', alkaliCarbonate: 'alkaliActive' } as const;
const shareOf = (request: PlanRequest, share: AlkaliShare): number =>
  alkaliShares(request)[share === 'alkaliActive' ? 'active' : 'carbonate'];

/** What of the alkali is hydroxide, or carbonate: together no more than all of it. */
function alkaliShare(field: AlkaliShare, label: string, hint: string) {
  const range = optionalRanges[field];
  return quantityEntry({
    label,
    hint,
    range,
    dimension: 'fraction',
    unit: '%',
    get: (request: PlanRequest) => shareOf(request, field),
    set(request: PlanRequest, value: number): PlanRequest {
      const beside = shareOf(request, otherShare[field]);
      const most = Math.min(range[1], 1 - beside);
      if (value > most + 1e-9) {
        const allowed = `Allowed: ${shown(range[0])} to ${shown(most)}`;
        throw new EntryError(
          `${label}: “${shown(value)}” is too much beside ${shown(beside)} of ${shareWords[otherShare[field]]}. ${allowed}.`,
        );
      }
      return { ...request, [field]: value };
    },
  });
}

const shareWords: Readonly<Record<AlkaliShare, string>> = { alkaliActive: 'hydroxide', alkaliCarbonate: 'carbonate' };
const shown = (share: number): string => `${Number((100 * share).toPrecision(5))}%`;

/** A share of the alkali that was refused beside the other one is read anew when that one changes. */
export function typedAim(
  sheet: Sheet<PlanRequest>,
  entries: Entries<PlanRequest>,
  field: string,
  text: string,
): Sheet<PlanRequest> {
  const next = typed(sheet, entries, field, text);
  const other = otherShare[field as AlkaliShare];
  const waiting = other && next.texts[other];
  return waiting === undefined ? next : typed(next, entries, other, waiting);
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
  ...['dissolveC', 'invertC', 'brownC', 'roastC'],
  ...Array.from({ length: mostFurtherHolds }, (_, at) => furtherField(at, 'celsius')),
];

export function aimEntries(
  unit: TemperatureUnit,
): Entries<PlanRequest> & Record<NumberField | AlkaliShare | 'dissolveC' | 'name', Entry<PlanRequest>> {
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
    alkaliActive: alkaliShare('alkaliActive', 'Active part', 'hydroxide in it as sold'),
    alkaliCarbonate: alkaliShare('alkaliCarbonate', 'Carbonate', 'from standing open'),
    acidGPerKg: plainEntry({ ...number('acidGPerKg', 'Citric acid', 'for each kg of sugar'), unit: 'g/kg' }),
    maltExtractGPerKg: plainEntry({
      ...number('maltExtractGPerKg', 'Dry malt extract', 'for each kg of sugar'),
      unit: 'g/kg',
    }),
    dissolveC: quantityEntry({
      label: 'Dissolve by',
      range: optionalRanges.dissolveC,
      get: (request: PlanRequest) => request.dissolveC ?? usualDissolveC,
      set: (request: PlanRequest, dissolveC: number): PlanRequest => ({ ...request, dissolveC }),
      dimension: 'temperature',
      unit,
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
