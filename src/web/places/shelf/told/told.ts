/** A sugar as a person tells it from memory, and the lot that comes of it. */
import type { NewLot } from '../../../../api/lot.ts';
import { expectedOfTold } from '../../../../core/lot/known.ts';
import { alkaliGPerKgRange, lotMassKg } from '../../../../core/lot/lot.ts';
import type { Entries } from '../../../parts/entry.ts';
import { nameEntry, plainEntry, quantityEntry } from '../../../parts/numberEntry.ts';
import { type AlkaliTold, alkaliOf, usualGPerKg } from './alkali.ts';

export interface Told extends AlkaliTold {
  readonly name: string;
  readonly form: 'hard' | 'syrup';
  readonly massKg: number;
  readonly ebc: number;
  /** Shares. */
  readonly water: number;
  readonly inverted: number;
}

export const firstTold: Told = {
  name: 'An earlier sugar',
  form: 'hard',
  massKg: 0.4,
  ebc: 150,
  water: 0.03,
  inverted: 0.6,
  alkali: 'unknown',
  alkaliGPerKg: usualGPerKg,
};

/** What may be off of a share that is told, either way (assumed). */
const waterOff = 0.4;
const invertedOff = 0.25;

export function lotOfTold(told: Told, madeAt: string): NewLot {
  const { name, form, massKg, ebc, water, inverted } = told;
  const waterShare = { low: water * (1 - waterOff), mid: water, high: Math.min(0.6, water * (1 + waterOff)) };
  const invertedRange = {
    low: Math.max(0, inverted - invertedOff),
    mid: inverted,
    high: Math.min(1, inverted + invertedOff),
  };
  const expected = expectedOfTold({ massKg, waterShare, inverted: invertedRange, ebc });
  const none = { cookId: null, planId: null, weighedKg: null } as const;
  return { name: name.trim(), origin: 'told', ...none, madeAt, form, expected, alkali: alkaliOf(told) };
}

export function toldEntries({ form }: Told): Entries<Told> {
  return {
    name: nameEntry(
      'Name',
      ({ name }) => name,
      (told, name) => ({ ...told, name }),
    ),
    mass: quantityEntry<Told, 'mass'>({
      label: 'How much there is',
      range: lotMassKg,
      dimension: 'mass',
      unit: 'g',
      get: ({ massKg }) => massKg,
      set: (told, massKg) => ({ ...told, massKg }),
    }),
    ebc: plainEntry<Told>({
      label: 'Colour, about',
      hint: 'of a 10 % solution; measure it later',
      unit: 'EBC',
      range: [0.5, 2500],
      get: ({ ebc }) => ebc,
      set: (told, ebc) => ({ ...told, ebc }),
    }),
    water: plainEntry<Told>({
      label: 'Water, about',
      hint: form === 'hard' ? '2 to 4 where it breaks dry' : '20 to 30 in a thick syrup',
      unit: '%',
      scale: 100,
      range: [0.002, 0.5],
      get: ({ water }) => water,
      set: (told, water) => ({ ...told, water }),
    }),
    inverted: plainEntry<Told>({
      label: 'Inverted, about',
      hint: 'most dark sugars: 50 to 90',
      unit: '%',
      scale: 100,
      range: [0, 1],
      get: ({ inverted }) => inverted,
      set: (told, inverted) => ({ ...told, inverted }),
    }),
    alkaliGPerKg: plainEntry<Told>({
      label: 'Pure alkali for each kg of sugar',
      unit: 'g/kg',
      range: alkaliGPerKgRange,
      get: ({ alkaliGPerKg }) => alkaliGPerKg,
      set: (told, alkaliGPerKg) => ({ ...told, alkaliGPerKg }),
    }),
  };
}
