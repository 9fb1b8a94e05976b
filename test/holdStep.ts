// The hold that tests of advice and alarms begin from.
import type { Step } from '../src/core/pan/steps.ts';

export const hold: Step = {
  kind: 'invert',
  bandC: [127, 133],
  end: { heldMinutes: 30 },
  approachNotch: 3,
  holdNotch: 2,
  alkali: [],
  waitS: 0,
};
