/** How the numbers of a kitchen are named in tables and documents of the command line. */
import type { KitchenNumber } from '../../core/learn/changes.ts';
import { numberWords } from '../../core/learn/words.ts';

export const labelOf = (name: KitchenNumber): string => {
  const { name: words, unit } = numberWords[name];
  return unit ? `${words}, ${unit}` : words;
};

/** Names with their UCUM units. */
export const keys: Readonly<Record<KitchenNumber, string>> = {
  stoveEfficiency: 'stove_efficiency_%',
  stoveLagS: 'stove_lag_s',
  lossFactor: 'loss_factor',
  evaporationFactor: 'evaporation_factor',
  surfaceRenewalS: 'surface_renewal_s',
  thickFilm: 'thick_film_W/(m2.K)',
  thermometerOffsetC: 'thermometer_offset_K',
  thermometerLagS: 'thermometer_lag_s',
  spoonFactor: 'spoon_factor',
  boilingTheta: 'boiling_theta',
  inversionRate130: 'inversion_rate_130',
  pigmentFirst: 'pigment_first',
  pigmentSecond: 'pigment_second',
  absorptivity420: 'absorptivity_420',
};
