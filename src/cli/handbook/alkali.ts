/** Handbook: the hot pH just after alkali has mixed in, before the sugar spends it. */
import { limits } from '../../core/advice/limits.ts';
import { MOLAR_MASS } from '../../core/matter/sugars.ts';
import { lnHydrogenActivity, sugarPk, waterPk } from '../../core/reactions/acidity.ts';
import { valueAt } from '../../core/reactions/parameter.ts';
import { reactionParameters } from '../../core/reactions/parameters.ts';
import { number, percent, usually, word } from '../input.ts';
import { entry } from './entry.ts';
import { drawn } from './range.ts';
import { temperature } from './syrupInputs.ts';

const citricKgPerMol = 0.192124;

/** Equivalents of base in a kg of pure alkali. */
const equivalentsPerKg = { naoh: 1 / MOLAR_MASS.naoh, lime: 2 / MOLAR_MASS.caoh2 };

const leftOut = 'The range leaves out how well the alkali was weighed and how much of it the sugar has spent.';

export const alkaliEntries = [
  entry({
    name: 'ph-after-alkali',
    meaning: 'hot pH when alkali has mixed in, before the sugar spends it (that takes about a minute)',
    unit: '[pH]',
    valid: 'up to 12 g/kg of alkali, 1 to 60 % water, 60 to 160 °C',
    source: 'balance of charges: alkali, acids, the sugar itself, malt',
    mark: 'derived',
    example: '--dose 5 --malt 8 --water 8',
    inputs: {
      dose: number('alkali as pure substance for each kg of sugar', [0, 12], 'g/kg'),
      alkali: usually(word('sodium hydroxide or slaked lime', ['naoh', 'lime']), 'naoh'),
      malt: usually(number('dry malt extract for each kg of sugar', [0, 100], 'g/kg'), '8'),
      acid: usually(number('citric acid for each kg of sugar', [0, 6], 'g/kg'), '0'),
      formed: usually(number('acids that the sugar has formed by now, for each kg of it', [0, 500], 'meq/kg'), '0'),
      water: usually(percent('water in the syrup, per cent', [0.01, 0.6]), '8'),
      inverted: usually(percent('sucrose that is inverted, per cent'), '15'),
      temperature: usually(temperature('syrup temperature', 60, 160), '135C'),
    },
    compute: ({ dose, alkali, malt, acid, formed, water, inverted, temperature: t }) => {
      const { acidPk, sugarPk120, maltBuffer, maltPh } = reactionParameters;
      const sucrose = 1 / MOLAR_MASS.sucrose;
      const equivalents = (dose / 1000) * equivalentsPerKg[alkali];
      const ph = (z: () => number) => {
        const charges = {
          base: equivalents,
          acid: formed / 1000,
          citric: acid / 1000 / citricKgPerMol,
          sugar: sucrose * (2 * inverted + 0.5 * (1 - inverted)),
          waterKg: (water / (1 - water)) * (1 + malt / 1000),
          buffer: valueAt(maltBuffer, z()) * (malt / 1000),
          bufferPh: valueAt(maltPh, z()),
          waterK: 10 ** -waterPk(t),
          acidK: 10 ** -valueAt(acidPk, z()),
          sugarK: 10 ** -sugarPk(valueAt(sugarPk120, z()), t),
        };
        return -lnHydrogenActivity(charges, -6 * Math.LN10) / Math.LN10;
      };
      const tooMuch = equivalents > limits.alkaliPerSugar.value + 1e-9;
      return {
        ...drawn(ph),
        note: tooMuch ? `Caution: no plan takes so much; ${limits.alkaliPerSugar.reason}. ${leftOut}` : leftOut,
        further: { 'equivalents_eq/kg': equivalents },
      };
    },
  }),
];
