/** Fields of volumes, masses, gravities and colours, in the units chosen. What is held is in L, kg, specific gravity and A430 per cm. */
import { gravityFromPlato, platoFromGravity } from '../../../core/beer/plato.ts';
import type { Entry } from '../../parts/entry.ts';
import { plainEntry, quantityEntry } from '../../parts/numberEntry.ts';
import { colourFactor, type GlassUnits } from './shown.ts';

export interface Facts<T> {
  readonly label: string;
  readonly hint?: string;
  readonly range: readonly [number, number];
  get(of: T): number;
  set(into: T, value: number): T;
}

export function litresEntry<T>(facts: Facts<T>, { volume }: GlassUnits): Entry<T> {
  return quantityEntry({ ...facts, dimension: 'volume', unit: volume, scale: 1e-3 });
}

export function massEntry<T>(facts: Facts<T>, { volume }: GlassUnits): Entry<T> {
  return quantityEntry({ ...facts, dimension: 'mass', unit: volume === 'L' ? 'g' : 'oz' });
}

export function gravityEntry<T>(facts: Facts<T>, { gravity }: GlassUnits): Entry<T> {
  if (gravity === 'SG') {
    const entry = plainEntry({ ...facts, unit: '' });
    // As hydrometers are read: 1.060.
    return { ...entry, show: (of) => entry.show(of).replace(/^\d(\.\d{0,2})?$/, () => facts.get(of).toFixed(3)) };
  }
  const [least, most] = facts.range;
  // Water is -0.003 P by the polynomial: nobody is to read or type that.
  const range = [Math.max(0, platoFromGravity(least)), Math.floor(10 * platoFromGravity(most)) / 10] as const;
  return plainEntry({
    ...facts,
    range,
    unit: '°P',
    get: (of) => Number(Math.max(0, platoFromGravity(facts.get(of))).toFixed(3)),
    set: (into, plato) => facts.set(into, Math.min(most, Math.max(least, gravityFromPlato(plato)))),
  });
}

export function colourEntry<T>(facts: Facts<T>, units: GlassUnits): Entry<T> {
  return plainEntry({ ...facts, unit: units.colour, scale: colourFactor(units) });
}

export function shareEntry<T>(facts: Facts<T>): Entry<T> {
  return plainEntry({ ...facts, unit: '%', scale: 100 });
}
