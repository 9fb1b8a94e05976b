// How a rehearsal of nothing but steps and a filling begins, for tests and measurements.
import type { Begun } from '../src/core/log/bodies.ts';
import { defaultKit, type Kit } from '../src/core/pan/kit.ts';
import type { Charge, Step } from '../src/core/pan/steps.ts';

export function bareCook(charge: Charge, steps: readonly Step[], seed: number, kit: Kit = defaultKit): Begun {
  return {
    mode: 'rehearsal',
    rehearsal: { seed, speed: 1 },
    planId: null,
    request: {},
    amounts: { charge, alkali: null },
    steps,
    kit,
  };
}
