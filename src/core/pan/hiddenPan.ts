/** A simulated pan whose properties nobody is told: what a rehearsal cooks on, and what the twin is tested against. */

import { advance } from './advance.ts';
import { filledPan, perform, spoonFill } from './deeds.ts';
import { drawnValues } from './model.ts';
import { createPan, type ModelValues } from './physics.ts';
import type { PreparedKit } from './preparedKit.ts';
import { place } from './state.ts';
import type { Charge, Deed } from './steps.ts';

export interface HiddenPan {
  readonly timeS: number;
  readonly values: ModelValues;
  readonly y: Float64Array;
  readonly temperatureC: number;
  readonly ph: number;
  moveTo(timeS: number): void;
  perform(deed: Deed): void;
  /** What the thermometer shows now, with its noise. */
  reading(): number;
}

export interface Hiding {
  /** How much wider than stated the hidden parameters are drawn. */
  readonly widening: number;
  /** Noise of the thermometer, C. */
  readonly noiseC: number;
  /** Scatter of a spoonful, as a share. */
  readonly spoonScatter: number;
}

/** Hidden kits lie a quarter further out than the model's own spreads; noise and scatter as in common kitchens (assumed). */
const usualHiding: Hiding = { widening: 1.25, noiseC: 0.4, spoonScatter: 0.2 };

const tolerance = 1e-4;

/** @param normal source of every draw: parameters first, then noise and scatter as they are needed */
export function createHiddenPan(
  prepared: PreparedKit,
  charge: Charge,
  normal: () => number,
  hiding: Hiding = usualHiding,
): HiddenPan {
  const { kit } = prepared;
  const values = drawnValues(kit, () => hiding.widening * normal());
  const pan = createPan(prepared, values);
  const y = filledPan(charge, kit, values);
  pan.derivatives(y, new Float64Array(y.length));
  let timeS = 0;
  return {
    get timeS() {
      return timeS;
    },
    values,
    y,
    get temperatureC() {
      return pan.view.temperatureC;
    },
    get ph() {
      return pan.view.ph;
    },
    moveTo(toS) {
      if (toS <= timeS) return;
      advance(pan, y, toS - timeS, tolerance);
      timeS = toS;
    },
    perform(deed) {
      perform(deed, y, pan, kit, spoonFill(hiding.spoonScatter, normal));
    },
    reading: () => y[place.tipC] + values.thermometerOffsetC + hiding.noiseC * normal(),
  };
}
