/** The fields of a kit: what each is called, how it is typed, and its limits. */
import { type Kit, kitRanges as ranges } from '../../../core/pan/kit.ts';
import { formatSpoon } from '../../../core/units/formatSpoon.ts';
import type { Entries, Entry } from '../entry.ts';
import { nameEntry, plainEntry, quantityEntry } from '../numberEntry.ts';
import type { TemperatureUnit } from '../temperature.ts';

const stove = (field: 'ratedPowerW' | 'notches') => ({
  get: (kit: Kit) => kit.stove[field],
  set: (kit: Kit, value: number): Kit => ({ ...kit, stove: { ...kit.stove, [field]: value } }),
});
const pan = (field: 'diameterM' | 'heightM' | 'massKg') => ({
  get: (kit: Kit) => kit.pan[field],
  set: (kit: Kit, value: number): Kit => ({ ...kit, pan: { ...kit.pan, [field]: value } }),
});
const whole = (field: 'spoonM3' | 'altitudeM' | 'roomC') => ({
  get: (kit: Kit) => kit[field],
  set: (kit: Kit, value: number): Kit => ({ ...kit, [field]: value }),
});

const hardnessTyped = quantityEntry<Kit, 'hardness'>({
  label: 'Hardness of the water',
  hint: 'if you know it; 10 dH or 18 fH will do too',
  range: ranges.hardnessMgPerL,
  get: ({ water }) => water.hardnessMgPerL ?? 0,
  set: (kit, hardnessMgPerL) => ({ ...kit, water: { ...kit.water, hardnessMgPerL } }),
  dimension: 'hardness',
  unit: 'mg/L',
});

/** Empty while nobody told it. */
const hardness: Entry<Kit> = {
  ...hardnessTyped,
  show: (kit) => (kit.water.hardnessMgPerL === undefined ? '' : hardnessTyped.show(kit)),
  put(kit, text) {
    if (text.trim() !== '') return hardnessTyped.put(kit, text);
    const { hardnessMgPerL: _, ...water } = kit.water;
    return { ...kit, water };
  },
};

export function kitEntries(unit: TemperatureUnit): Entries<Kit> {
  return {
    name: nameEntry(
      'Name of the kit',
      (kit) => kit.name,
      (kit, name) => ({ ...kit, name }),
    ),
    'stove.ratedPowerW': quantityEntry({
      label: 'Rated power',
      ...stove('ratedPowerW'),
      range: ranges.ratedPowerW,
      dimension: 'power',
      unit: 'W',
    }),
    'stove.notches': plainEntry({
      label: 'Dial goes to',
      ...stove('notches'),
      range: ranges.notches,
      unit: '',
      whole: true,
    }),
    'pan.diameterM': quantityEntry({
      label: 'Inside diameter',
      ...pan('diameterM'),
      range: ranges.diameterM,
      dimension: 'length',
      unit: 'cm',
    }),
    'pan.heightM': quantityEntry({
      label: 'Inside height',
      ...pan('heightM'),
      range: ranges.heightM,
      dimension: 'length',
      unit: 'cm',
    }),
    'pan.massKg': quantityEntry({
      label: 'Weight of the empty pan',
      ...pan('massKg'),
      range: ranges.panMassKg,
      dimension: 'mass',
      unit: 'g',
    }),
    spoonM3: quantityEntry({
      label: 'Spoon for cold water',
      hint: 'a US teaspoon is 4.9 mL',
      ...whole('spoonM3'),
      range: ranges.spoonM3,
      dimension: 'volume',
      unit: 'mL',
      // Its name, or mL where it has none: what is shown is read back.
      write: (m3) => formatSpoon(m3).replace(/,.*/, ''),
    }),
    'water.alkalinityMgPerL': quantityEntry({
      label: 'Alkalinity of the water',
      hint: 'as CaCO₃; distilled water has 0',
      range: ranges.alkalinityMgPerL,
      get: (kit) => kit.water.alkalinityMgPerL,
      set: (kit, alkalinityMgPerL) => ({ ...kit, water: { ...kit.water, alkalinityMgPerL } }),
      dimension: 'hardness',
      unit: 'mg/L',
    }),
    'water.hardnessMgPerL': hardness,
    altitudeM: quantityEntry({
      label: 'Altitude',
      ...whole('altitudeM'),
      range: ranges.altitudeM,
      dimension: 'length',
      unit: 'm',
    }),
    roomC: quantityEntry({
      label: 'Room',
      ...whole('roomC'),
      range: ranges.roomC,
      dimension: 'temperature',
      unit,
    }),
  };
}
