/** What a cook's deeds did to the pan, as the simulation takes them. */
import type { TimedDeed } from '../pan/steps.ts';
import type { CookState } from './fold.ts';

/** Deeds that change the pan or the step, in order; stirring and spoon tests change neither. */
export function panDeeds({ deeds }: CookState): TimedDeed[] {
  return deeds.flatMap((entry): TimedDeed[] => {
    const { timeS } = entry;
    if (entry.kind === 'heat') return [{ timeS, deed: { kind: 'heat', notch: entry.body.notch } }];
    if (entry.kind === 'water') {
      const { waterKg, spoonfuls } = entry.body;
      return [{ timeS, deed: { kind: 'water', waterKg, spoonfuls } }];
    }
    if (entry.kind === 'alkali') {
      const { substance, alkaliKg, waterKg } = entry.body;
      return [{ timeS, deed: { kind: 'alkali', part: { substance, alkaliKg, waterKg } } }];
    }
    if (entry.kind === 'step') return [{ timeS, deed: { kind: 'step', index: entry.body.index } }];
    return entry.kind === 'poured' ? [{ timeS, deed: { kind: 'pour' } }] : [];
  });
}
