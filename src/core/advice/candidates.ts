/**
 * Every deed that may be offered at all at this moment. What is not made here can't be advised: the limits of safety are asked
 * before any forecast is.
 */
import type { Kit } from '../pan/kit.ts';
import { kitParameters } from '../pan/kitParameters.ts';
import type { Deed, Step } from '../pan/steps.ts';
import { alkaliBlockedBy, limits } from './limits.ts';
import type { Progress } from './progress.ts';

export interface Situation {
  readonly timeS: number;
  readonly kit: Kit;
  readonly steps: readonly Step[];
  readonly progress: Progress;
  readonly notch: number;
  /** Temperature of the syrup: middle, and the mark below which nine in ten members lie. */
  readonly temperatureC: number;
  readonly highC: number;
  /** Syrup in the pan, kg. */
  readonly syrupKg: number;
  readonly solids: number;
}

export interface Candidate {
  readonly id: string;
  /** Deeds to do together; none: go on as it is. */
  readonly deeds: readonly Deed[];
  /** What it costs the cook, against a K outside the band for a minute. */
  readonly trouble: number;
}

/** Largest spoonful above 120 C, and cooler, kg of water. */
export function mostWaterKg(s: Situation): number {
  if (s.highC > limits.roastTemperature.value) return 0;
  return s.highC > limits.portionHotFrom.value ? limits.hotSpoonful.value : limits.coolWater.value * s.syrupKg;
}

/** A deed has told after this long, beside the ring's own lag, s. */
const settlesS = 45;
/**
 * Turning back what was turned a short while ago, in times that it takes to tell, is hunting where the ring answers late: it costs more
 * than it seems to gain. On a quick ring it is steering. Chosen by measured time in the band (bench/results/advice.md).
 */
const latelyTimes = 3;
const latelyAtMostS = 240;
const backAndForth = 1;
const quickRingS = 30;
/** A spoonful is given this long to act before another is thought of, s. */
export const spoonRestS = 45;

/** How long it takes on this stove until a turn of the dial has told, s. */
export function tellsAfterS(kit: Kit): number {
  return settlesS + kitParameters(kit).stoveLagS.centre;
}

function turn(s: Situation, to: number): Deed[] {
  const notch = Math.min(s.kit.stove.notches, Math.max(0, Math.round(to)));
  return notch === s.notch ? [] : [{ kind: 'heat', notch }];
}

function spoonfuls(s: Situation): Candidate[] {
  // Below the middle of the band, or while the last one still acts, water would only be cooked off again.
  const { bandC } = s.steps[s.progress.stepIndex];
  if (s.temperatureC < (bandC[0] + bandC[1]) / 2 || s.timeS < s.progress.wateredS + spoonRestS) return [];
  const spoonKg = s.kit.spoonM3 * 1000;
  const sizes = [0.5, 1].filter((size) => size * spoonKg <= mostWaterKg(s));
  return sizes.map((size) => ({
    id: `water-${size}`,
    deeds: [{ kind: 'water', waterKg: size * spoonKg, spoonfuls: size }],
    trouble: 0.5 + 0.3 * size,
  }));
}

/** Turns of the dial: one or two steps, or off; never above what the plan foresees for the step, nor up when it is too hot. */
function turns(s: Situation, approaching: boolean): Candidate[] {
  const step = s.steps[s.progress.stepIndex];
  const most = Math.min(s.kit.stove.notches, Math.max(step.approachNotch, step.holdNotch) + 1);
  const up =
    s.highC > limits.roastTemperature.value
      ? []
      : [s.notch + 1, s.notch + 2, step.approachNotch].map((n) => Math.min(n, most));
  const down = [s.notch - 1, s.notch - 2, 0].map((n) => Math.max(0, n));
  const settings = new Set([...down, ...up.filter((n) => n > s.notch)]);
  settings.delete(s.notch);
  return [...settings].map((notch) => ({
    id: `heat-${notch}`,
    deeds: turn(s, notch),
    trouble: 0.35 + (approaching ? 0 : hunting(s, notch)),
  }));
}

function hunting({ timeS, kit, notch, progress }: Situation, to: number): number {
  const lately = timeS - progress.turnedS < Math.min(latelyAtMostS, latelyTimes * tellsAfterS(kit));
  if (!lately || Math.sign(to - notch) !== Math.sign(progress.turnedFrom - notch)) return 0;
  const lagS = kitParameters(kit).stoveLagS.centre;
  return (backAndForth * lagS) / (lagS + quickRingS);
}

/** Deeds that steer the temperature, beside waiting. On the way to a band only the dial. */
export function steering(s: Situation, approaching: boolean): readonly Candidate[] {
  const step = s.steps[s.progress.stepIndex];
  // On the way up water only undoes what the ring does.
  if (approaching && ('reachedC' in step.end || s.temperatureC < step.bandC[0])) return turns(s, approaching);
  const water = spoonfuls(s);
  const lower = turn(s, s.notch - 1);
  const both =
    s.notch > 0
      ? water.map((c) => ({ ...c, id: `${c.id}-lower`, deeds: [...c.deeds, ...lower], trouble: c.trouble + 0.3 }))
      : [];
  return [...water, ...turns(s, approaching), ...both];
}

/** The next part of alkali, if one is due and may go in now. */
export function alkaliPart(s: Situation): Candidate | undefined {
  const step = s.steps[s.progress.stepIndex];
  const part = step?.alkali[s.progress.partsGiven];
  if (!part || alkaliBlockedBy.includes(s.kit.pan.material)) return undefined;
  if (s.highC > limits.alkaliTemperature.value) return undefined;
  if (s.timeS < s.progress.lastPartS + step.waitS) return undefined;
  return { id: `alkali-${s.progress.partsGiven + 1}`, deeds: [{ kind: 'alkali', part }], trouble: 0 };
}

/** The next portion of hot water in letting down, of the size that the temperature allows; the ring must be off. */
export function letDownPortion(s: Situation): Candidate | undefined {
  const { letDown } = s.steps[s.progress.stepIndex];
  if (!letDown || s.notch > 0 || s.highC > limits.roastTemperature.value) return undefined;
  const waterKg = s.highC > limits.portionHotFrom.value ? letDown.hotPortionKg : letDown.coolPortionKg;
  return { id: 'portion', deeds: [{ kind: 'water', waterKg, spoonfuls: 0 }], trouble: 0 };
}
