/** The fields of priming: what each is called, how it is typed, and its limits. */
import { gramsPerLitreOfVolume } from '../../../core/beer/carbonDioxide.ts';
import { type PrimingRequest, primingRanges as ranges } from '../../../core/beer/priming.ts';
import { formatQuantity } from '../../../core/units/formatQuantity.ts';
import type { Entries, Entry } from '../../parts/entry.ts';
import { plainEntry, quantityEntry } from '../../parts/numberEntry.ts';
import type { TemperatureUnit } from '../../parts/temperature.ts';
import { optional } from './optional.ts';
import { litresEntry } from './quantities.ts';
import type { GlassUnits } from './shown.ts';

/** Of the whole glass where no volume is said. */
export type PrimingForm = Omit<PrimingRequest, 'volumeL'> & { readonly volumeL: number | null };

type NumberField = 'beerC' | 'wishGPerL' | 'bottleL' | 'airPressurePa';

function number(field: NumberField, label: string, hint: string) {
  return {
    label,
    hint,
    range: ranges[field],
    get: (form: PrimingForm) => form[field],
    set: (form: PrimingForm, value: number): PrimingForm => ({ ...form, [field]: value }),
  };
}

export function primingEntries(units: GlassUnits, temperature: TemperatureUnit): Entries<PrimingForm> {
  return {
    volumeL: optional(
      litresEntry(
        {
          label: 'Beer to prime',
          range: ranges.volumeL,
          get: ({ volumeL }: PrimingForm) => volumeL ?? 0,
          set: (form, volumeL) => ({ ...form, volumeL }),
        },
        units,
      ),
      ({ volumeL }) => volumeL === null,
      (form) => ({ ...form, volumeL: null }),
    ),
    beerC: quantityEntry({
      ...number('beerC', 'Warmest it has been', 'warmer beer holds less gas'),
      dimension: 'temperature',
      unit: temperature,
    }),
    wishGPerL: carbonationEntry(),
    bottleL: quantityEntry({
      ...number('bottleL', 'One bottle', 'in mL, L or fl oz'),
      dimension: 'volume',
      scale: 1e-3,
      unit: units.volume === 'L' ? 'mL' : units.volume === 'gal' ? 'fl oz' : 'imp fl oz',
      write: (litres) => bottleText(litres, units),
    }),
    airPressurePa: plainEntry({
      ...number('airPressurePa', 'Pressure of the air', 'not reduced to sea level'),
      unit: 'hPa',
      scale: 0.01,
    }),
  };
}

function bottleText(litres: number, { volume }: GlassUnits): string {
  const unit = volume === 'L' ? 'mL' : volume === 'gal' ? 'fl oz' : 'imp fl oz';
  return formatQuantity(Number((litres / 1000).toPrecision(4)), unit).replace(/^[\d.]+/, (number) =>
    String(Number(Number(number).toPrecision(4))),
  );
}

/** In volumes; a number of g/L is known by its unit. */
function carbonationEntry(): Entry<PrimingForm> {
  const facts = number('wishGPerL', 'Carbonation wished', 'in all; in volumes or g/L');
  const inVolumes = plainEntry({ ...facts, unit: 'vol', scale: 1 / gramsPerLitreOfVolume });
  const inGrams = plainEntry({ ...facts, unit: 'g/L' });
  return {
    ...inVolumes,
    put: (form, text) => (/g\s*\/\s*l\s*$/i.test(text) ? inGrams : inVolumes).put(form, text),
  };
}
