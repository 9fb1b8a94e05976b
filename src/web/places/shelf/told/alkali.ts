/** What a sugar was browned with, as a person tells it: not known, nothing, or one of the two alkalis with its dose. */
import type { AlkaliGiven } from '../../../../core/lot/lot.ts';

export const alkalis = [
  ['unknown', 'not known'],
  ['none', 'none'],
  ['sodiumHydroxide', 'NaOH'],
  ['calciumHydroxide', 'Ca(OH)₂'],
] as const;

export interface AlkaliTold {
  readonly alkali: (typeof alkalis)[number][0];
  /** Of no account without one. */
  readonly alkaliGPerKg: number;
}

/** As the Desk proposes it. */
export const usualGPerKg = 5;

export function alkaliOf({ alkali, alkaliGPerKg }: AlkaliTold): AlkaliGiven | null {
  if (alkali === 'unknown') return null;
  if (alkali === 'none') return { substance: 'sodiumHydroxide', gramsPerKgSucrose: 0 };
  return { substance: alkali, gramsPerKgSucrose: alkaliGPerKg };
}

export function toldOfAlkali(given: AlkaliGiven | null): AlkaliTold {
  if (!given) return { alkali: 'unknown', alkaliGPerKg: usualGPerKg };
  const { substance, gramsPerKgSucrose } = given;
  if (gramsPerKgSucrose === 0) return { alkali: 'none', alkaliGPerKg: usualGPerKg };
  return { alkali: substance, alkaliGPerKg: Number(gramsPerKgSucrose.toPrecision(4)) };
}
