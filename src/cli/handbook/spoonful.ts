/** Handbook: what a spoonful of cold water does to a boiling batch. */
import { limits } from '../../core/advice/limits.ts';
import { partlyInverted } from '../../core/matter/sugars.ts';
import { liquidDensityKgPerM3 } from '../../core/matter/water.ts';
import { type Spooning, spoonfulDropK } from '../../core/pan/spoonful.ts';
import { number, percent, quantity, usually } from '../input.ts';
import { Beyond, entry } from './entry.ts';
import { normal, z90 } from './range.ts';
import { air, pressurePaOf, requireBoiling, temperature } from './syrupInputs.ts';

/** Spread of what a kitchen spoon holds: by habit 10 %, from spoonful to spoonful 20 % (common practice, no source). */
const spoonSpread = Math.hypot(0.1, 0.2);

/** What the balance is made for: the batch's highest temperature, and the largest spoonful as a share of it. */
const [mostC, mostShare] = [160, 0.1];

export const spoonfulEntries = [
  entry({
    name: 'spoonful',
    meaning: 'fall of the temperature of a boiling batch after a spoonful of cold water',
    unit: 'K',
    valid: 'syrup that boils at up to 160 °C, spoonfuls to a tenth of the batch',
    source: 'energy balance along the boiling curve',
    mark: 'derived',
    example: '--batch 450g --temperature 137C --spoon 1tsp',
    inputs: {
      batch: quantity('mass', 'syrup in the pan, such as 450g', 'g', [0.05, 10]),
      temperature: temperature('temperature at which it boils', 60, mostC),
      spoon: usually(quantity('volume', 'water of the spoonful, such as 1tsp or 5mL', 'mL', [1e-7, 1e-4]), '1tsp'),
      water: usually(quantity('temperature', 'its temperature', 'C', [0, 100]), '1C'),
      inverted: usually(percent('invert sugar in the dry sugar, per cent'), '0'),
      panHeat: usually(number('heat capacity of the pan that follows the syrup', [0, 10_000], 'J/K'), '0'),
      ...air,
    },
    compute: (given) => {
      const density = liquidDensityKgPerM3(given.water);
      requireBoiling(given.temperature, partlyInverted(given.inverted), pressurePaOf(given), mostC);
      if (given.spoon * density > mostShare * given.batch) {
        const millilitres = Math.floor((1e7 * mostShare * given.batch) / density) / 10;
        throw new Beyond('spoon', `up to ${millilitres} mL, a tenth of the batch`);
      }
      const spooning = (spoonM3: number, theta = 0): Spooning => ({
        batchKg: given.batch,
        temperatureC: given.temperature,
        dry: partlyInverted(given.inverted),
        spoonKg: spoonM3 * density,
        waterC: given.water,
        pressurePa: pressurePaOf(given),
        panJPerK: given.panHeat,
        theta,
      });
      const { dropK, flashedKg, slopeOnlyK, allFlashedK } = spoonfulDropK(spooning(given.spoon));
      const bySpoonK = dropK - spoonfulDropK(spooning(given.spoon * (1 - spoonSpread))).dropK;
      const byTable = (theta: number) => spoonfulDropK(spooning(given.spoon, theta)).dropK;
      const byTableK = (byTable(z90) - byTable(-z90)) / (2 * z90);
      const { hotSpoonful, portionHotFrom } = limits;
      const tooMuch = given.temperature > portionHotFrom.value && given.spoon * density > hotSpoonful.value;
      const caution = `Caution: that is too much at once; ${hotSpoonful.reason}.`;
      return {
        ...normal(dropK, Math.hypot(bySpoonK, byTableK), 0),
        note: `at equilibrium; water that flashes before it mixes in cools more, up to ${allFlashedK.toFixed(1)} K${tooMuch ? `. ${caution}` : ''}`,
        further: {
          ends_Cel: given.temperature - dropK,
          flashed_g: 1000 * flashedKg,
          slope_only_K: slopeOnlyK,
          all_flashed_K: allFlashedK,
        },
      };
    },
  }),
];
