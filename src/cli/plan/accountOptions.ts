/** The options of `plan` that are about what it comes to: tray and prices. */

import { thicknessRangeM } from '../../core/planning/account/casting.ts';
import type { AccountOptions } from '../../core/planning/account.ts';
import { number, optional, quantity, readAll, type Texts } from '../input.ts';

const price = (of: string) => optional(number(`price of ${of}, in any currency`, [0, 1e6]));

export const accountInputs = {
  thickness: optional(quantity('length', 'of the cast, such as 6mm', 'mm', thicknessRangeM), '6mm'),
  sugarPrice: price('a kg of sugar'),
  maltPrice: price('a kg of malt extract'),
  alkaliPrice: price('a kg of alkali'),
  acidPrice: price('a kg of citric acid'),
  energyPrice: price('a kWh'),
  boughtPrice: price('a kg of bought brewing sugar, to compare with'),
};

export function accountOptionsFrom(texts: Texts): AccountOptions {
  const given = readAll(accountInputs, texts);
  return {
    thicknessM: given.thickness,
    prices: {
      sugar: given.sugarPrice,
      maltExtract: given.maltPrice,
      alkali: given.alkaliPrice,
      acid: given.acidPrice,
      energy: given.energyPrice,
      bought: given.boughtPrice,
    },
  };
}
