/** The levers of the field as they are spoken of. */
import type { Lever } from '../levers.ts';

interface LeverWords {
  readonly name: string;
  /** What more of it is called, along an axis. */
  readonly more: string;
  readonly unit: 'g/kg' | 'min' | 'C';
}

export const leverWords: Readonly<Record<Lever, LeverWords>> = {
  alkaliGPerKg: { name: 'Alkali dose', more: 'more alkali', unit: 'g/kg' },
  maltExtractGPerKg: { name: 'Malt extract', more: 'more malt extract', unit: 'g/kg' },
  invertMinutes: { name: 'Inverting hold', more: 'longer inverting', unit: 'min' },
  brownC: { name: 'Browning heat', more: 'hotter browning', unit: 'C' },
  brownMinutes: { name: 'Browning hold', more: 'longer browning', unit: 'min' },
  roastC: { name: 'Roasting heat', more: 'hotter roast', unit: 'C' },
  roastMinutes: { name: 'Roasting hold', more: 'longer roast', unit: 'min' },
};
