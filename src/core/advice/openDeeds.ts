/** Which deeds a person may do at this moment, and why not the others: nothing is open here that `candidates.ts` does not make. */
import type { Deed } from '../pan/steps.ts';
import { alkaliPart, letDownPortion, type Situation, spoonRestS, steering } from './candidates.ts';
import { alkaliBlockedBy, limits } from './limits.ts';
import { isApproaching } from './progress.ts';

/** Why a deed is not open. */
export type Closed =
  | 'roast limit'
  | 'portion limit'
  | 'below the band'
  | 'on the way up'
  | 'in the lower half'
  | 'still acting'
  | 'alkali in this pan'
  | 'alkali heat'
  | 'wait'
  | 'nothing due'
  | 'heat off first'
  | 'end of the dial'
  | 'above the plan'
  | 'not the last step';

export type Opening =
  | { readonly open: true; readonly deed: Deed }
  | { readonly open: false; readonly because: Closed; readonly waitS?: number };

export const deedNames = ['spoonful', 'half', 'portion', 'lower', 'raise', 'off', 'alkali', 'step', 'pour'] as const;
export type DeedName = (typeof deedNames)[number];
export type OpenDeeds = Readonly<Record<DeedName, Opening>>;

const opened = (deed: Deed | undefined, because: Closed): Opening =>
  deed ? { open: true, deed } : { open: false, because };

/** @param s where the cook stands, from `situationOf` */
export function openDeeds(s: Situation): OpenDeeds {
  const { steps, progress, notch } = s;
  const index = progress.stepIndex;
  const last = index >= steps.length - 1;
  const heat = (to: number): Deed | undefined => candidate(s, `heat-${to}`);
  const tooHot = s.highC > limits.roastTemperature.value;
  return {
    spoonful: spoonful(s, 1),
    half: spoonful(s, 0.5),
    portion: portion(s),
    lower: opened(heat(notch - 1), 'end of the dial'),
    raise: opened(heat(notch + 1), tooHot ? 'roast limit' : dialEnds(s) ? 'end of the dial' : 'above the plan'),
    off: opened(heat(0), 'end of the dial'),
    alkali: alkali(s),
    step: opened(last ? undefined : { kind: 'step', index: index + 1 }, 'nothing due'),
    pour: opened(last ? { kind: 'pour' } : undefined, 'not the last step'),
  };
}

const dialEnds = (s: Situation): boolean => s.notch >= s.kit.stove.notches;

/** The deed of a candidate that steering makes now. */
function candidate(s: Situation, id: string): Deed | undefined {
  return steering(s, isApproaching(s.progress, s.steps[s.progress.stepIndex])).find((each) => each.id === id)?.deeds[0];
}

function spoonful(s: Situation, size: number): Opening {
  if (s.steps[s.progress.stepIndex].letDown) return { open: false, because: 'nothing due' };
  return opened(candidate(s, `water-${size}`), noSpoonfulBecause(s));
}

function noSpoonfulBecause(s: Situation): Closed {
  const { bandC, end } = s.steps[s.progress.stepIndex];
  if (s.highC > limits.roastTemperature.value) return 'roast limit';
  if ('reachedC' in end) return 'on the way up';
  if (s.temperatureC < bandC[0]) return 'below the band';
  if (s.temperatureC < (bandC[0] + bandC[1]) / 2) return 'in the lower half';
  return s.timeS < s.progress.wateredS + spoonRestS ? 'still acting' : 'portion limit';
}

/** A portion of hot water in letting down, of the size that the temperature allows. */
function portion(s: Situation): Opening {
  const { letDown } = s.steps[s.progress.stepIndex];
  if (!letDown) return { open: false, because: 'nothing due' };
  if (s.highC > limits.roastTemperature.value) return { open: false, because: 'roast limit' };
  return opened(letDownPortion(s)?.deeds[0], 'heat off first');
}

function alkali(s: Situation): Opening {
  const deed = alkaliPart(s)?.deeds[0];
  if (deed) return { open: true, deed };
  const { steps, progress, kit, highC, timeS } = s;
  const step = steps[progress.stepIndex];
  if (progress.partsGiven >= step.alkali.length) return { open: false, because: 'nothing due' };
  if (alkaliBlockedBy.includes(kit.pan.material)) return { open: false, because: 'alkali in this pan' };
  if (highC > limits.alkaliTemperature.value) return { open: false, because: 'alkali heat' };
  return { open: false, because: 'wait', waitS: progress.lastPartS + step.waitS - timeS };
}
