/** A cook done again from its log with given numbers of the model: what would have been read and measured then. */
import { advance } from '../pan/advance.ts';
import { filledPan, perform } from '../pan/deeds.ts';
import { createPan, type ModelValues } from '../pan/physics.ts';
import type { PreparedKit } from '../pan/preparedKit.ts';
import type { Charge, Deed } from '../pan/steps.ts';
import { instrumentOf, type Observation, type Seen } from '../twin/observe.ts';
import type { TwinEvent } from '../twin/twin.ts';

export interface CookTold {
  readonly prepared: PreparedKit;
  readonly charge: Charge;
  /** Deeds and observations in the order of time. */
  readonly events: readonly TwinEvent[];
}

export interface Replay {
  readonly observations: readonly (TwinEvent & { readonly observation: Observation })[];
  readonly observed: Float64Array;
  readonly sd: Float64Array;
  /** How many deeds with spoons there were: how full each was is not known. */
  readonly spoonings: number;
  /**
   * What each observation would have shown; undefined for a pan that the model can't follow.
   *
   * @param fills how full the spoons of each spooning were, as a factor
   * @param upTo of so many observations, the first
   */
  predict(values: ModelValues, fills: ArrayLike<number>, upTo?: number): Float64Array | undefined;
}

/**
 * Sensitivities are differences of two runs: the integrator's error must be small against what a change of a number does. With a fifth of
 * it nothing that is learned moves by more than a few hundredths of a standard deviation, and it takes a third longer.
 */
const tolerance = 5e-5;
/** A pan that got hotter than the model's tables is not followed further, C: it stays as it is, and is far off what was read. */
const hottestC = 195;

export function createReplay({ prepared, charge, events }: CookTold): Replay {
  const observations = events.filter((event) => 'observation' in event);
  const instruments = observations.map(({ observation }) => instrumentOf(observation));
  const spooned = (deed: Deed): boolean => deed.kind === 'water' && deed.spoonfuls > 0;

  function predict(values: ModelValues, fills: ArrayLike<number>, upTo = observations.length) {
    const pan = createPan(prepared, values);
    const y = filledPan(charge, prepared.kit, values);
    const dy = new Float64Array(y.length);
    const predicted = new Float64Array(upTo);
    pan.derivatives(y, dy);
    let timeS = 0;
    let poured = false;
    let seen = 0;
    let spooning = 0;
    for (const event of events) {
      if (seen >= upTo) break;
      if (!poured && event.timeS > timeS && pan.view.temperatureC < hottestC) {
        advance(pan, y, event.timeS - timeS, tolerance);
        timeS = event.timeS;
      }
      if ('observation' in event) {
        pan.derivatives(y, dy);
        const sight: Seen = { y, values, ph: pan.view.ph, temperatureC: pan.view.temperatureC };
        predicted[seen] = instruments[seen].expected(sight);
        if (!Number.isFinite(predicted[seen])) return undefined;
        seen++;
        continue;
      }
      const { deed } = event;
      if (deed.kind === 'pour') poured = true;
      perform(deed, y, pan, prepared.kit, spooned(deed) ? fills[spooning++] : 1);
    }
    return predicted;
  }

  return {
    observations,
    observed: Float64Array.from(instruments, ({ observed }) => observed),
    sd: Float64Array.from(instruments, ({ sd }) => sd),
    spoonings: events.filter((event) => 'deed' in event && spooned(event.deed)).length,
    predict,
  };
}
