/** What a line said was done, as deeds of the pan; or why it can't have been. */
import type { Deed, Step } from '../../core/pan/steps.ts';
import { misused } from '../stop.ts';
import type { Cooked, Said } from './line.ts';

export type Done = Exclude<Said, { readonly kind: 'observed' }>;

/** Where the cook stood when it was done. */
export interface Before {
  readonly stepIndex: number;
  /** Parts of alkali told so far. */
  readonly partsGiven: number;
}

export function deedsSaid(done: Done, { kit, steps }: Cooked, { stepIndex, partsGiven }: Before): readonly Deed[] {
  const step = steps[stepIndex];
  switch (done.kind) {
    case 'heat':
      return [{ kind: 'heat', notch: done.notch }];
    case 'water': {
      // Syrup is let down with hot water; everywhere else water is spooned in cold.
      const spoonfuls = step?.letDown ? 0 : done.waterKg / (kit.spoonM3 * 1000);
      return [{ kind: 'water', waterKg: done.waterKg, spoonfuls }];
    }
    case 'alkali': {
      const left = (step?.alkali ?? []).slice(partsGiven);
      if (left.length < done.parts) notDue(done.parts, step, left.length, steps);
      return left.slice(0, done.parts).map((part) => ({ kind: 'alkali', part }));
    }
    case 'step':
      if (done.index === stepIndex) underWay(stepIndex, steps);
      return [{ kind: 'step', index: done.index }];
    case 'poured':
      return [{ kind: 'pour' }];
  }
}

function notDue(parts: number, step: Step | undefined, left: number, steps: readonly Step[]): never {
  if (step?.alkali.length) misused('alkali', String(parts), 'is more than is left', `up to ${left}`);
  const its = steps.find(({ alkali }) => alkali.length > 0);
  const allowed = its ? `after {"step": "${its.kind}"}` : 'not in this plan';
  misused('alkali', String(parts), `is not due in the step ${step?.kind}`, allowed);
}

function underWay(index: number, steps: readonly Step[]): never {
  const others = steps.filter((_, other) => other !== index).map(({ kind }) => kind);
  misused('step', String(steps[index]?.kind), 'is under way already', others.join(', '));
}
