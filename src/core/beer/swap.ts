/** One sugar for another in the same beer, at equal colour or equal extract; and the same beer in another size. */

import { type Dosed, dosed, wished, withDoseOf } from './dose.ts';
import type { Glass } from './glass.ts';
import { mixture } from './mixture.ts';
import { settled } from './settled.ts';
import type { Sugar } from './sugar.ts';
import { central } from './uncertain.ts';

export type Equal = 'colour' | 'extract';

/**
 * @param at the dose whose sugar is to be replaced; it is added at the same time
 * @param equal what stays as it is: the colour of the beer, or its original gravity
 */
export function swapped(glass: Glass, at: number, sugar: Sugar, equal: Equal): Dosed {
  const kind = equal === 'colour' ? 'ebc' : 'gravity';
  const value = wished(mixture(settled(glass, central)), kind);
  const doses = glass.doses.map((dose, i) => (i === at ? { ...dose, sugar } : dose));
  return dosed(withDoseOf({ ...glass, doses }, at, 0), at, { kind, value });
}

/** The same beer with another volume at pitching: everything that has a size is scaled, so that nothing in the glass changes. */
export function scaledTo(glass: Glass, volumeL: number): Glass {
  const factor = volumeL / mixture(settled(glass, central)).volumeL;
  return {
    ...glass,
    rest: { ...glass.rest, volumeL: glass.rest.volumeL * factor },
    kettleLossL: glass.kettleLossL * factor,
    doses: glass.doses.map((dose) => ({ ...dose, massKg: dose.massKg * factor })),
  };
}
