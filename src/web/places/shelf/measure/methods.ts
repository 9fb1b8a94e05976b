/** Ways of measuring as forms: fields, what to do, and where a new form begins. A further way is one more entry. */
import {
  type Absorbance,
  type Acidity,
  type Comparison,
  type Hydrometer,
  type Method,
  type Reading,
  type Refractometer,
  noteRanges as ranges,
} from '../../../../core/lot/note.ts';
import type { Entries } from '../../../parts/entry.ts';
import { plainEntry, quantityEntry } from '../../../parts/numberEntry.ts';
import type { TemperatureUnit } from '../../../parts/temperature.ts';
import { madeUpEntries, sugarG, usualMadeUp } from './madeUpEntries.ts';
import { photoForm } from './photo/photoForm.ts';

interface MethodWords {
  readonly name: string;
  readonly says: string;
  /** What to do, in order. */
  readonly steps: readonly string[];
}

/** What a picture shows is read from it; all else is typed in or chosen. */
export type TypedMethod = Exclude<Method, 'photo'>;

interface MethodForm extends MethodWords {
  readonly start: Reading;
  entries(unit: TemperatureUnit): Entries<Reading>;
}

/** Each form's fields hold readings of its own method only. */
function methodForm<R extends Reading>(
  form: MethodWords & { readonly start: R; readonly entries: (unit: TemperatureUnit) => Entries<R> },
): MethodForm {
  return form as unknown as MethodForm;
}

interface Weighed {
  readonly sugarG: number;
  readonly waterG: number;
}

const waterG = <R extends Weighed>() =>
  quantityEntry<R, 'mass'>({
    label: 'Water weighed to it',
    hint: '0 for the sugar as it is',
    range: ranges.waterG,
    dimension: 'mass',
    unit: 'g',
    scale: 1e-3,
    get: (reading) => reading.waterG,
    set: (reading, waterG) => ({ ...reading, waterG }),
  });
const temperatureC = <R extends { readonly temperatureC: number }>(unit: TemperatureUnit) =>
  quantityEntry<R, 'temperature'>({
    label: 'Its temperature',
    range: ranges.temperatureC,
    dimension: 'temperature',
    unit,
    get: (reading) => reading.temperatureC,
    set: (reading, temperatureC) => ({ ...reading, temperatureC }),
  });

const mixing = 'Dissolve about 10 g of the sugar in twice its weight of water, warm. Weigh both.';
const usualMix = { sugarG: 10, waterG: 20 } as const;

export const methodForms: Readonly<Record<TypedMethod, MethodForm>> = {
  refractometer: methodForm<Refractometer>({
    name: 'Refractometer',
    says: 'Brix, for the water in it',
    steps: [mixing, 'Let it cool to 10 to 30 °C, stir, and put a drop on the glass. Wait half a minute.'],
    start: { method: 'refractometer', brix: 25, temperatureC: 20, compensated: false, ...usualMix },
    entries: (unit) => ({
      sugarG: sugarG(),
      waterG: waterG(),
      brix: plainEntry({
        label: 'It shows',
        unit: '°Bx',
        range: ranges.brix,
        get: ({ brix }) => brix,
        set: (reading, brix) => ({ ...reading, brix }),
      }),
      temperatureC: temperatureC(unit),
    }),
  }),
  hydrometer: methodForm<Hydrometer>({
    name: 'Hydrometer',
    says: 'gravity or Brix, for the water in it',
    steps: [
      'Dissolve the sugar in enough water to float it: about 40 g in 160 g. Weigh both.',
      'Let it cool, and take its temperature together with the reading.',
    ],
    start: { method: 'hydrometer', scale: 'gravity', reading: 1.08, temperatureC: 20, sugarG: 40, waterG: 160 },
    entries: (unit) => ({
      sugarG: sugarG(),
      waterG: waterG(),
      reading: plainEntry({
        label: 'It shows',
        unit: '',
        range: [0, ranges.brix[1]],
        get: ({ reading }) => reading,
        set: (told, reading) => ({ ...told, reading }),
      }),
      temperatureC: temperatureC(unit),
    }),
  }),
  acidity: methodForm<Acidity>({
    name: 'pH',
    says: 'of a dilution',
    steps: [
      'Dissolve 10 g in 90 g of distilled or soft water, so that lots can be compared.',
      'Calibrate a meter before. Dark sugar dyes a strip: read its edge.',
    ],
    start: { method: 'acidity', by: 'meter', ph: 5.5, sugarG: 10, waterG: 90 },
    entries: () => ({
      sugarG: sugarG(),
      waterG: waterG(),
      ph: plainEntry({
        label: 'pH',
        unit: '',
        range: ranges.ph,
        get: ({ ph }) => ph,
        set: (reading, ph) => ({ ...reading, ph }),
      }),
    }),
  }),
  absorbance: methodForm<Absorbance>({
    name: 'Photometer',
    says: 'absorbance of a dilution, for the colour',
    steps: ['Zero it on water in the same cell.', 'The dilution must be clear: filter it through paper if it is not.'],
    start: { method: 'absorbance', ...usualMadeUp, wavelengthNm: 430, absorbance: 0.5, pathCm: 1 },
    entries: () => ({
      ...madeUpEntries<Absorbance>(),
      absorbance: plainEntry({
        label: 'Absorbance',
        hint: 'best from 0.2 to 0.9',
        unit: '',
        range: ranges.absorbance,
        get: ({ absorbance }) => absorbance,
        set: (reading, absorbance) => ({ ...reading, absorbance }),
      }),
      pathCm: quantityEntry<Absorbance, 'length'>({
        label: 'Width of the cell',
        range: ranges.pathCm,
        dimension: 'length',
        unit: 'cm',
        scale: 1e-2,
        get: ({ pathCm }) => pathCm,
        set: (reading, pathCm) => ({ ...reading, pathCm }),
      }),
    }),
  }),
  comparison: methodForm<Comparison>({
    name: 'By eye',
    says: 'a dilution beside computed swatches, for the colour',
    steps: [
      'Pour the dilution into a white cup or a glass on white paper, by daylight, beside this screen. Its white should be about as bright as the paper.',
      'Look straight down, and choose the swatch that it is most like.',
    ],
    start: { method: 'comparison', ...usualMadeUp, a430PerCm: 0.1, step: 1.35, depthCm: 3 },
    entries: () => ({
      ...madeUpEntries<Comparison>(),
      depthCm: quantityEntry<Comparison, 'length'>({
        label: 'Depth of the liquid',
        range: ranges.depthCm,
        dimension: 'length',
        unit: 'cm',
        scale: 1e-2,
        get: ({ depthCm }) => depthCm,
        set: (reading, depthCm) => ({ ...reading, depthCm }),
      }),
    }),
  }),
};

export const methodWords: Readonly<Record<Method, MethodWords>> = { ...methodForms, photo: photoForm };
