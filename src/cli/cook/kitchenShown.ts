/** How the numbers of a kitchen that a cook can teach are named, scaled and rounded. */
import type { KitchenName } from '../../core/advice/reveal.ts';

export interface Shown {
  readonly label: string;
  /** Name with its UCUM unit in documents. */
  readonly key: string;
  readonly scale: number;
  readonly digits: number;
}

export const kitchenShown: Readonly<Record<KitchenName, Shown>> = {
  stoveEfficiency: { label: 'power that reaches the pan %', key: 'stove_efficiency_%', scale: 100, digits: 1 },
  stoveLagS: { label: 'lag of the ring s', key: 'stove_lag_s', scale: 1, digits: 0 },
  lossFactor: { label: 'heat loss, times the usual', key: 'loss_factor', scale: 1, digits: 2 },
  spoonFactor: { label: 'spoonful, times the spoon', key: 'spoon_factor', scale: 1, digits: 2 },
  thermometerOffsetC: { label: 'thermometer shows more by K', key: 'thermometer_offset_K', scale: 1, digits: 2 },
  thermometerLagS: { label: 'lag of the thermometer s', key: 'thermometer_lag_s', scale: 1, digits: 1 },
};
