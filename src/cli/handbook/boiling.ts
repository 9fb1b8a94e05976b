/** Handbook: the boil of a syrup, the water it holds, and what a spoonful of cold water does. */
import { ACTIVITY_MAX_SOLIDS, bindingHeatJPerKg, waterActivity, waterPerSolids } from '../../core/matter/activity.ts';
import { boilingPointC, boilingPointSdC, solidsAtBoil } from '../../core/matter/boiling.ts';
import { boilingPointOfWaterC } from '../../core/matter/water.ts';
import { number, percent } from '../input.ts';
import { entry } from './entry.ts';
import { between, giveFactor, normal, z90 } from './range.ts';
import {
  air,
  composition,
  drySolidsOf,
  drySugar,
  pressurePaOf,
  requireBoiling,
  syrupOf,
  temperature,
} from './syrupInputs.ts';

const activitySource =
  'form of Starzak & Peacock 1997, Zuckerindustrie 122, refitted; mixtures by equal activity, Stokes & Robinson 1966, J. Phys. Chem. 70:2126';
const boilingSource = `${activitySource}; water by IAPWS SR1-86`;
const share = (fraction: number) => 100 * fraction;

/** No published table of invert syrup reaches beyond this share of solids. */
const invertTableEnd = 0.72;

function spreadNote(solids: number, sucroseShare: number): string {
  if (solids === 0) return 'water alone';
  return solids > invertTableEnd && sucroseShare < 1
    ? 'the range is the spread of the published sucrose tables; for other sugars no table reaches beyond 72 % solids'
    : 'the range is the spread of the published tables';
}

export const boilingEntries = [
  entry({
    name: 'boiling-point',
    meaning: 'temperature at which a syrup boils',
    unit: 'Cel',
    valid: '0 to 99.5 % solids, 5 to 120 kPa, boiling at up to 200 °C',
    source: boilingSource,
    mark: 'derived',
    example: '--sucrose 85',
    inputs: { ...composition, ...air },
    compute: (given) => {
      const { solids, dry } = syrupOf(given, ACTIVITY_MAX_SOLIDS);
      const pressurePa = pressurePaOf(given);
      const sdK = boilingPointSdC(solids);
      const waterBoilsC = boilingPointOfWaterC(pressurePa);
      return {
        ...normal(boilingPointC(solids, dry, pressurePa), sdK, waterBoilsC),
        note: spreadNote(solids, dry.sucrose),
        further: { sd_K: sdK, water_boils_Cel: waterBoilsC, pressure_Pa: pressurePa },
      };
    },
  }),
  entry({
    name: 'solids',
    meaning: 'dry solids of a syrup that visibly boils at a temperature',
    unit: '%',
    valid: 'temperatures from the boiling point of water to that of 99.5 % solids, 5 to 120 kPa',
    source: boilingSource,
    mark: 'derived',
    example: '--temperature 130C --sugar sucrose',
    inputs: { temperature: temperature('boiling temperature', 50, 200), ...drySugar, ...air },
    compute: (given) => {
      const dry = drySolidsOf(given);
      const pressurePa = pressurePaOf(given);
      requireBoiling(given.temperature, dry, pressurePa);
      const solids = solidsAtBoil(given.temperature, dry, pressurePa);
      const errorK = z90 * boilingPointSdC(Math.min(solids, ACTIVITY_MAX_SOLIDS));
      const solidsAt = (t: number): number => {
        if (t <= boilingPointOfWaterC(pressurePa)) return 0;
        const dryEndC = boilingPointC(ACTIVITY_MAX_SOLIDS, dry, pressurePa);
        return t >= dryEndC ? ACTIVITY_MAX_SOLIDS : solidsAtBoil(t, dry, pressurePa);
      };
      return {
        ...between(
          share(solids),
          share(solidsAt(given.temperature - errorK)),
          share(solidsAt(given.temperature + errorK)),
        ),
        note: 'holds only while it visibly boils: a pan held below its boiling point is drier or wetter than this',
        further: { 'water_%': share(1 - solids), pressure_Pa: pressurePa },
      };
    },
  }),
  entry({
    name: 'water-activity',
    meaning: 'water activity over a syrup (1 = pure water)',
    unit: '1',
    valid: '0 to 99.5 % solids, -20 to 200 °C',
    source: activitySource,
    mark: 'derived',
    example: '--glucose 41 --fructose 41 --temperature 25C',
    inputs: { ...composition, temperature: temperature('syrup temperature', -20, 200) },
    compute: (given) => {
      const { solids, dry } = syrupOf(given, ACTIVITY_MAX_SOLIDS);
      const at = (theta: number) => waterActivity(solids, given.temperature, dry, theta);
      return between(at(0), at(-z90), at(z90));
    },
  }),
  entry({
    name: 'water-held',
    meaning: 'water that a sugar holds in equilibrium with a water activity or a relative humidity',
    unit: '%',
    valid: 'activity 0.02 to 0.99, -20 to 200 °C',
    source: activitySource,
    mark: 'derived',
    example: '--activity 0.33 --temperature 25C --sugar invert',
    inputs: {
      activity: number('water activity, that is relative humidity / 100', [0.02, 0.99]),
      temperature: temperature('temperature of the sugar', -20, 200),
      ...drySugar,
    },
    compute: (given) => {
      const dry = drySolidsOf(given);
      const at = (theta: number) => {
        const ratio = waterPerSolids(given.activity, given.temperature, dry, theta);
        return share(ratio / (1 + ratio));
      };
      return { ...between(at(0), at(-z90), at(z90)), note: 'not for candy that is a glass, which holds a little more' };
    },
  }),
  entry({
    name: 'binding-heat',
    meaning: 'heat that binds the water to the sugar, beyond the heat of evaporation',
    unit: 'J/kg',
    valid: '0 to 99.5 % sucrose',
    source: 'temperature slope of the activity equation (Gibbs-Helmholtz)',
    mark: 'derived',
    example: '--sucrose 95',
    inputs: { sucrose: percent('sucrose, per cent of the mass', [0, ACTIVITY_MAX_SOLIDS]) },
    compute: ({ sucrose }) => giveFactor(bindingHeatJPerKg(sucrose), 2, 'error assumed'),
  }),
];
