/** What is believed after a line, as a line of JSON. */
import { ebcFromA430 } from '../../core/colour/scales.ts';
import type { Taken } from '../../core/twin/ensemble.ts';
import { type Range, rangeOf } from '../../core/twin/range.ts';
import { unseenRanges } from '../../core/twin/unseen.ts';
import { adviceWords } from '../cook/adviceWords.ts';
import type { Planning } from '../plan/makePlan.ts';
import type { Follower } from './follower.ts';

export function estimateOf(follower: Follower, taken: Taken | undefined, line: number, { plan }: Planning) {
  const { twin, progress } = follower;
  const { waterShare, inverted, ph, a430 } = unseenRanges(twin.members, plan.amounts.charge);
  return {
    line,
    t: follower.timeS,
    temperature_Cel: shown(rangeOf(twin.members.map(({ temperatureC }) => temperatureC)), 1, 2),
    'water_%': shown(waterShare, 100, 2),
    'inverted_%': shown(inverted, 100, 2),
    pH: shown(ph, 1, 2),
    a430: shown(a430, 1, 4),
    ebc: shown(a430, ebcFromA430(1), 2),
    surprise: taken ? rounded(taken.surprise, 2) : null,
    used: taken?.used ?? null,
    step: plan.steps[progress.stepIndex]?.kind,
    held_min: rounded(progress.heldMinutes, 2),
    advice: adviceOf(follower, plan.steps),
  };
}

function adviceOf(follower: Follower, steps: Planning['plan']['steps']) {
  const advice = follower.advice();
  if (!advice) return null;
  const { kind, urgency, expectedC, leavesBand, minutesLeft } = advice;
  const { stepIndex, partsGiven } = follower.progress;
  return {
    kind,
    deeds: adviceWords(advice, { notch: follower.twin.notch, steps, stepIndex, partsGiven }),
    urgency,
    expected_Cel: shown(expectedC, 1, 2),
    leavesBand: rounded(leavesBand, 2),
    minutesLeft: minutesLeft === undefined ? null : rounded(minutesLeft, 2),
  };
}

function shown({ low, mid, high }: Range, scale: number, digits: number): Range {
  return {
    low: rounded(low * scale, digits),
    mid: rounded(mid * scale, digits),
    high: rounded(high * scale, digits),
  };
}

function rounded(value: number, digits: number): number {
  return Number(value.toFixed(digits));
}
