/** The fields of the rest of the beer: what each is called, how it is typed, and its limits. */
import { glassRanges as ranges } from '../../../core/beer/glass.ts';
import { type KeptGlass, keptGlassRanges } from '../../../core/beer/keptGlass.ts';
import type { Entries } from '../../parts/entry.ts';
import { nameEntry, plainEntry, quantityEntry } from '../../parts/numberEntry.ts';
import { optional } from './optional.ts';
import { colourEntry, gravityEntry, litresEntry, shareEntry } from './quantities.ts';
import type { GlassUnits } from './shown.ts';

type RestField = keyof KeptGlass['rest'];

function rest(field: RestField, label: string, hint?: string) {
  return {
    label,
    ...(hint && { hint }),
    range: ranges[field],
    get: (glass: KeptGlass) => glass.rest[field],
    set: (glass: KeptGlass, value: number): KeptGlass => ({ ...glass, rest: { ...glass.rest, [field]: value } }),
  };
}

export function restEntries(units: GlassUnits): Entries<KeptGlass> {
  return {
    name: nameEntry(
      'Name of the beer',
      ({ name }) => name,
      (glass, name) => ({ ...glass, name }),
    ),
    volumeL: litresEntry(rest('volumeL', 'Wort', 'at the fermenter, without the sugars'), units),
    gravity: gravityEntry(rest('gravity', 'Its gravity', 'before fermentation'), units),
    colour: colourEntry(rest('a430PerCm', 'Its colour', 'once it is beer, without the sugars'), units),
    attenuation: shareEntry(rest('attenuation', 'Attenuation', 'apparent, without the sugars')),
    sodium: plainEntry({ ...rest('sodiumMgPerL', 'Sodium', 'from water and malt'), unit: 'mg/L' }),
    calcium: plainEntry({ ...rest('calciumMgPerL', 'Calcium', 'from water and malt'), unit: 'mg/L' }),
    kettleLossL: litresEntry(
      {
        label: 'Left in the kettle',
        hint: 'takes its share of the sugar',
        range: ranges.kettleLossL,
        get: (glass: KeptGlass) => glass.kettleLossL,
        set: (glass, kettleLossL) => ({ ...glass, kettleLossL }),
      },
      units,
    ),
    pathCm: quantityEntry({
      label: 'Width of the glass',
      hint: 'way of the light through it',
      range: ranges.pathCm,
      dimension: 'length',
      unit: 'cm',
      scale: 0.01,
      get: (glass: KeptGlass) => glass.pathCm,
      set: (glass, pathCm) => ({ ...glass, pathCm }),
    }),
    boughtPricePerKg: optional(
      plainEntry({
        label: 'Price of a kg of bought sugar',
        hint: 'solids, to compare; may stay empty',
        range: keptGlassRanges.pricePerKg,
        unit: '',
        get: (glass: KeptGlass) => glass.boughtPricePerKg ?? 0,
        set: (glass, boughtPricePerKg) => ({ ...glass, boughtPricePerKg }),
      }),
      ({ boughtPricePerKg }) => boughtPricePerKg === null,
      (glass) => ({ ...glass, boughtPricePerKg: null }),
    ),
  };
}
