/** The order in which sugar and water come together, as steps. Water never goes onto hot sugar in more than the portions of safety. */
import { limits } from '../../../../core/advice/limits.ts';
import type { LetDown } from '../../../../core/lot/keep/letDown.ts';
import { grams } from '../../../parts/figures.ts';
import { degrees, type TemperatureUnit } from '../../../parts/temperature.ts';

export function orderSteps({ order, waterKg, portionKg = 0 }: LetDown, unit: TemperatureUnit): readonly string[] {
  const water = `${grams(waterKg)} g`;
  switch (order) {
    case 'sugar into water':
      return [
        `Weigh ${water} of water into a pan and warm it to about ${degrees(70, unit)}.`,
        'Put the broken sugar into the water, a handful at a time, and stir until it is clear. Never the other way round on a hot plate.',
        'Bring it to the boil for a minute, weigh it, and make good with water what went off as steam.',
      ];
    case 'pour':
      return [`Pour in ${water} of hot water in a thin stream, and stir until it is even.`];
    case 'by small parts':
      return [
        'Heat off. Long sleeves, face away: it boils up.',
        `Hot water, at most ${grams(portionKg)} g at a time. Stir each in until it is calm before the next; ${water} in all.`,
      ];
    case 'by teaspoons':
      return [
        `Best: heat off, and wait until it is below ${degrees(limits.portionHotFrom.value, unit)}. ${limits.portionHotFrom.reason.replace(/^f/, 'F')}.`,
        `Otherwise at most ${grams(portionKg)} g of water at once, from a long spoon, lid in the other hand. Wait until it is calm before the next.`,
        `When it is below ${degrees(limits.portionHotFrom.value, unit)}, the rest by small parts; ${water} in all.`,
      ];
  }
}
