/** How each hidden thing is named, scaled and rounded. */
import type { KitchenName, Revealed } from '../../core/advice/reveal.ts';
import { ebcFromA430 } from '../../core/colour/scales.ts';
import type { UnseenName } from '../../core/twin/unseen.ts';

export interface Shown {
  readonly label: string;
  /** Name with its UCUM unit in documents. */
  readonly key: string;
  readonly scale: number;
  readonly digits: number;
}

export const shownAs: Readonly<Record<Revealed<'temperatureC' | UnseenName | KitchenName>['name'], Shown>> = {
  temperatureC: { label: 'temperature °C', key: 'temperature_Cel', scale: 1, digits: 1 },
  waterShare: { label: 'water %', key: 'water_%', scale: 100, digits: 2 },
  inverted: { label: 'inverted %', key: 'inverted_%', scale: 100, digits: 1 },
  ph: { label: 'pH, hot', key: 'ph_[pH]', scale: 1, digits: 2 },
  a430: { label: 'colour EBC', key: 'colour_{EBC}', scale: ebcFromA430(1), digits: 1 },
  stoveEfficiency: { label: 'power that reaches the pan %', key: 'stove_efficiency_%', scale: 100, digits: 1 },
  stoveLagS: { label: 'lag of the ring s', key: 'stove_lag_s', scale: 1, digits: 0 },
  lossFactor: { label: 'heat loss, times the usual', key: 'loss_factor', scale: 1, digits: 2 },
  spoonFactor: { label: 'spoonful, times the spoon', key: 'spoon_factor', scale: 1, digits: 2 },
  thermometerOffsetC: { label: 'thermometer shows more by K', key: 'thermometer_offset_K', scale: 1, digits: 2 },
  thermometerLagS: { label: 'lag of the thermometer s', key: 'thermometer_lag_s', scale: 1, digits: 1 },
};
