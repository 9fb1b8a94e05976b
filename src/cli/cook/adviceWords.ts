/** Advice and deeds in words. */
import type { Advice } from '../../core/advice/advise.ts';
import type { Deed, Step } from '../../core/pan/steps.ts';
import { stepNames } from '../plan/stepText.ts';

/** What the words depend on: the dial as it stands, the steps and the parts of alkali given in the step. */
export interface Standing {
  readonly notch: number;
  readonly steps: readonly Step[];
  readonly stepIndex: number;
  readonly partsGiven: number;
}

function deedWords(deed: Deed, now: Standing): string {
  switch (deed.kind) {
    case 'heat':
      return heatWords(deed.notch, now.notch);
    case 'water':
      return waterAmount(deed);
    case 'alkali': {
      const parts = now.steps[now.stepIndex]?.alkali.length ?? 0;
      return `part ${now.partsGiven + 1} of ${parts} of the alkali`;
    }
    case 'step':
      return `begin to ${nameOf(now.steps[deed.index])}`;
    case 'pour':
      return 'pour';
  }
}

/** What was done. */
export function doneWords(deed: Deed, steps: readonly Step[]): string {
  switch (deed.kind) {
    case 'heat':
      return deed.notch === 0 ? 'heat off' : `dial at ${deed.notch}`;
    case 'water':
      return `${waterAmount(deed)} in`;
    case 'alkali':
      return 'a part of the alkali in';
    case 'step':
      return `${nameOf(steps[deed.index])} begun`;
    case 'pour':
      return 'poured';
  }
}

/** What to do, a deed a string; nothing to do: none. */
export function adviceWords({ kind, deeds }: Advice, now: Standing): string[] {
  if (kind === 'off the heat') return ['turn the heat off and take the pan off the ring; add no water'];
  return deeds.map((deed) => deedWords(deed, now));
}

function heatWords(notch: number, before: number): string {
  if (notch === 0) return 'turn the heat off';
  return `turn ${notch > before ? 'up' : 'down'} to ${notch}`;
}

function waterAmount({ spoonfuls, waterKg }: Extract<Deed, { kind: 'water' }>): string {
  if (spoonfuls === 0) return `${(1000 * waterKg).toFixed(waterKg < 0.01 ? 1 : 0)} g of hot water`;
  if (spoonfuls === 0.5) return 'half a spoon of cold water';
  return `${spoonfuls} spoonful${spoonfuls === 1 ? '' : 's'} of cold water`;
}

const nameOf = (step: Step | undefined): string => (step ? stepNames[step.kind] : '');
