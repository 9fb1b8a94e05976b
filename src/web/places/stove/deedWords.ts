/** Deeds as they are spoken of at the stove. */
import type { Kit } from '../../../core/pan/kit.ts';
import type { Deed, Step } from '../../../core/pan/steps.ts';
import { grams } from '../../parts/figures.ts';
import { stepNames } from '../../parts/stepNames.ts';

/** A US teaspoon is 4.93 mL, a metric one 5 mL. */
export function spoonName({ spoonM3 }: Kit): string {
  return spoonM3 > 4.5e-6 && spoonM3 < 5.5e-6 ? 'teaspoon' : 'spoonful';
}

export interface Cook {
  readonly kit: Kit;
  readonly steps: readonly Step[];
  readonly notch: number;
  readonly partsGiven: number;
  readonly stepIndex: number;
}

export function deedWords(deed: Deed, cook: Cook): string {
  const { kit, steps, notch, partsGiven, stepIndex } = cook;
  switch (deed.kind) {
    case 'heat':
      return deed.notch === 0
        ? 'Dial to 0: off the heat'
        : `Dial ${deed.notch > notch ? 'up' : 'down'} to ${deed.notch}`;
    case 'water':
      if (deed.spoonfuls === 0) return `${grams(deed.waterKg)} g of hot water`;
      return `${deed.spoonfuls < 1 ? 'Half a' : 'One'} ${spoonName(kit)} of cold water`;
    case 'alkali':
      return `Alkali, part ${partsGiven + 1} of ${steps[stepIndex]?.alkali.length ?? 0}`;
    case 'step':
      return `Begin: ${stepNames[steps[deed.index]?.kind ?? 'cast']}`;
    case 'pour':
      return 'Pour';
  }
}
