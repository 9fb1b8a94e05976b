import { expect, it } from 'vitest';
import { glassRanges } from '../../../core/beer/glass.ts';
import { EntryError } from '../../parts/entry.ts';
import { optional } from './optional.ts';
import { colourEntry, gravityEntry, litresEntry } from './quantities.ts';

const metric = { volume: 'L', gravity: 'SG', colour: 'EBC' } as const;
const other = { volume: 'gal', gravity: 'P', colour: 'SRM' } as const;
const facts = (range: readonly [number, number]) => ({
  label: 'It',
  range,
  get: (value: number) => value,
  set: (_: number, value: number) => value,
});

it('a gravity may be typed as Plato: 15 P is 1.0611 by the ASBC table', () => {
  const plato = gravityEntry(facts(glassRanges.gravity), other);
  expect(plato.put(1, '15')).toBeCloseTo(1.0611, 4);
  expect(plato.put(1, '15,0 °P')).toBeCloseTo(1.0611, 4);
  expect(plato.show(1)).toBe('0 °P');
  expect(plato.put(1.05, '0')).toBeCloseTo(1, 4);
  expect(() => plato.put(1, '40')).toThrow('Allowed: 0 °P to 32.2 °P.');
  const gravity = gravityEntry(facts(glassRanges.gravity), metric);
  expect(gravity.put(1, '1.0611')).toBe(1.0611);
  expect([1.06, 1.0611, 1].map(gravity.show)).toEqual(['1.060', '1.0611', '1.000']);
});

it('volumes and colours are held in L and A430 in whatever unit they are typed', () => {
  expect(litresEntry(facts(glassRanges.volumeL), other).put(1, '5')).toBeCloseTo(18.927, 3);
  expect(litresEntry(facts(glassRanges.volumeL), other).put(1, '20 L')).toBeCloseTo(20, 9);
  expect(litresEntry(facts(glassRanges.volumeL), metric).put(1, '4 imp gal')).toBeCloseTo(18.184, 3);
  expect(colourEntry(facts(glassRanges.a430PerCm), metric).put(0, '50')).toBe(2);
  expect(colourEntry(facts(glassRanges.a430PerCm), other).put(0, '25.4 SRM')).toBeCloseTo(2, 9);
});

it('a field that may stay empty is none when it is', () => {
  type Held = number | null;
  const entry = optional<Held>(
    litresEntry(
      { ...facts([1, 10]), get: (held: Held) => held ?? 0, set: (_: Held, value: number): Held => value },
      metric,
    ),
    (held) => held === null,
    () => null,
  );
  expect(entry.show(null)).toBe('');
  expect(entry.put(3, ' ')).toBeNull();
  expect(entry.put(null, '3')).toBeCloseTo(3, 9);
  expect(() => entry.put(null, '11')).toThrow(EntryError);
});
