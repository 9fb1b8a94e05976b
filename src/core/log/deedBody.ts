/** A deed of the pan as the log tells it. */
import type { Deed } from '../pan/steps.ts';
import type { EventBodies } from './bodies.ts';

type DeedKind = 'heat' | 'water' | 'alkali' | 'step' | 'poured';
export type DeedBody = { [K in DeedKind]: { readonly kind: K; readonly body: EventBodies[K] } }[DeedKind];

/** @param partsGiven parts of alkali that went in before it */
export function deedBody(deed: Deed, partsGiven: number): DeedBody {
  switch (deed.kind) {
    case 'heat':
      return { kind: 'heat', body: { notch: deed.notch } };
    case 'water':
      return { kind: 'water', body: { waterKg: deed.waterKg, spoonfuls: deed.spoonfuls, spoon: null } };
    case 'alkali':
      return { kind: 'alkali', body: { part: partsGiven + 1, ...deed.part } };
    case 'step':
      return { kind: 'step', body: { index: deed.index } };
    case 'pour':
      return { kind: 'poured', body: {} };
  }
}
