/** What alkali a sugar really got, from the log of its cook: what was poured in, not what the plan wished for. */
import type { Begun } from '../log/bodies.ts';
import type { AnyEntry } from '../log/corrections.ts';
import type { AlkaliGiven } from './lot.ts';

/** @returns none for a cook that got both kinds: no one figure says that */
export function alkaliOfCook({ amounts }: Pick<Begun, 'amounts'>, entries: readonly AnyEntry[]): AlkaliGiven | null {
  const parts = entries.flatMap((entry) => (entry.kind === 'alkali' ? [entry.body] : []));
  const substance = parts[0]?.substance ?? 'sodiumHydroxide';
  if (parts.some((part) => part.substance !== substance)) return null;
  const alkaliKg = parts.reduce((sum, part) => sum + part.alkaliKg, 0);
  return { substance, gramsPerKgSucrose: (1000 * alkaliKg) / amounts.charge.sucroseKg };
}
