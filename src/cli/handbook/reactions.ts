/** Handbook: inversion, acidity and the rate constants of browning. */
import { sugarPk } from '../../core/reactions/acidity.ts';
import { arrhenius } from '../../core/reactions/arrhenius.ts';
import { reactionParameters } from '../../core/reactions/parameters.ts';
import { roastShare } from '../../core/reactions/rates.ts';
import { number, optional, percent, usually, word } from '../input.ts';
import { entry } from './entry.ts';
import { lognormal, normal } from './range.ts';
import { lnRateSd, rateFacts, rateNames } from './rates.ts';
import { temperature } from './syrupInputs.ts';
import { ucumOf } from './ucum.ts';

/** The scheme's volume of syrup is that of 1.33 kg/L; water alone counts as 1 kg/L. */
const syrupKgPerL = 1.33;

export const reactionEntries = [
  entry({
    name: 'inversion',
    meaning: 'half-life of sucrose in hot acid syrup',
    unit: 'min',
    valid: 'pH 2 to 8 (hot), 20 to 170 °C; measured in dilute acid near 25 °C, carried on by the activation energy',
    source: `${reactionParameters.inversionRate130.source}; energy: ${reactionParameters.inversionEnergy.source}; water: ${reactionParameters.waterOrder.source}`,
    mark: 'derived',
    example: '--ph 4 --temperature 120C',
    inputs: {
      ph: number('pH at that temperature, not of a cooled sample', [2, 8]),
      temperature: temperature('syrup temperature', 20, 170),
      water: optional(percent('water in the syrup, per cent, for the water term; dilute if not given', [0.001, 1])),
    },
    compute: ({ ph, temperature: t, water }) => {
      const { inversionRate130, inversionEnergy, waterOrder, scissionRate150, scissionEnergy } = reactionParameters;
      const waterKgPerL = water === undefined ? 1 : Math.min(1, water * syrupKgPerL);
      const byAcid =
        arrhenius(inversionRate130.centre, inversionEnergy.centre, 130, t) *
        10 ** -ph *
        waterKgPerL ** waterOrder.centre;
      const byHeat = arrhenius(scissionRate150.centre, scissionEnergy.centre, 150, t);
      const lnSd = Math.hypot(lnRateSd('inversion', t, 6.8), waterOrder.sd * Math.log(waterKgPerL));
      return {
        ...lognormal(Math.LN2 / byAcid, lnSd),
        note: 'by acid alone; in thick syrup heat splits sucrose as well, at any pH: see by acid and heat',
        further: { with_scission_min: Math.LN2 / (byAcid + byHeat) },
      };
    },
  }),
  entry({
    name: 'rate',
    meaning: 'rate constant of a reaction of the scheme at a temperature and pH',
    unit: '/min',
    valid: '20 to 170 °C, pH 3 to 10; no syrup mechanism is shown to hold above 150 °C',
    source: 'see the parameter of that name: umberpan handbook parameters',
    mark: 'derived',
    example: '--name fructoseDecay --temperature 140C',
    inputs: {
      name: word('the reaction', rateNames),
      temperature: temperature('syrup temperature', 20, 170),
      ph: usually(number('hot pH', [3, 10]), '6.8'),
    },
    compute: ({ name, temperature: t, ph }) => {
      const { parameter, energy, referenceC, phOrder, roasted } = rateFacts(name);
      const facts = reactionParameters[parameter];
      const perPh = phOrder ? reactionParameters[phOrder].centre : 0;
      const highestPh = phOrder === 'amadoriPhOrder' ? 8.5 : 10;
      const byPh = 10 ** (perPh * (Math.min(ph, highestPh) - 6.8));
      const byRoast = roasted ? reactionParameters.roastMultiplier.centre ** roastShare(t) : 1;
      const value = arrhenius(facts.centre, reactionParameters[energy].centre, referenceC, t) * byPh * byRoast;
      return {
        ...lognormal(value, lnRateSd(name, t, ph)),
        unit: ucumOf(facts.unit),
        source: facts.source,
        mark: facts.mark,
        note: [
          `at ${Number(t.toFixed(1))} °C, carried there from what the model keeps: ${facts.meaning}`,
          ...(perPh === 0 ? ['pH does not enter this constant'] : []),
          ...(perPh !== 0 && ph > highestPh ? [`taken at pH ${highestPh}, the highest that it is known for`] : []),
        ].join('; '),
      };
    },
  }),
  entry({
    name: 'sugar-pk',
    meaning: 'pK at which the hydroxyls of glucose and fructose give off hydrogen',
    unit: '1',
    valid: '0 to 200 °C',
    source: reactionParameters.sugarPk120.source,
    mark: reactionParameters.sugarPk120.mark,
    example: '--temperature 130C',
    inputs: { temperature: temperature('syrup temperature', 0, 200) },
    compute: ({ temperature: t }) =>
      normal(sugarPk(reactionParameters.sugarPk120.centre, t), reactionParameters.sugarPk120.sd),
  }),
];
