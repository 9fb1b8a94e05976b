/** Handbook: water, steam and air. */
import { pressureAtAltitudePa } from '../../core/matter/air.ts';
import {
  latentHeatJPerKg,
  liquidDensityKgPerM3,
  liquidEnthalpyJPerKg,
  liquidHeatCapacityJPerKgK,
  saturationPressurePa,
  steamEnthalpyAtAtmosphericJPerKg,
} from '../../core/matter/water.ts';
import { waterPk } from '../../core/reactions/acidity.ts';
import { quantity } from '../input.ts';
import { entry } from './entry.ts';
import { give, giveShare } from './range.ts';
import { temperature } from './syrupInputs.ts';

const wagnerPruss = 'Wagner & Pruss 1993, J. Phys. Chem. Ref. Data 22:783 (IAPWS SR1-86(1992))';
const fitted = 'polynomial fitted to IAPWS-95';

const found = 'checked against a table';

/** The tests hold these two against a table of IAPWS-95 up to 200 C. */
function toldTo200(temperatureC: number) {
  return temperatureC <= 200 ? found : 'error from memory';
}

export const waterEntries = [
  entry({
    name: 'vapour-pressure',
    meaning: 'pressure of saturated water vapour',
    unit: 'Pa',
    valid: '0 to 373 °C',
    source: `${wagnerPruss}, eq. 1`,
    mark: 'from memory',
    example: '--temperature 120C',
    inputs: { temperature: temperature('water temperature', 0, 373) },
    compute: ({ temperature: t }) => giveShare(saturationPressurePa(t), 3e-4, toldTo200(t)),
  }),
  entry({
    name: 'latent-heat',
    meaning: 'heat that turns saturated water into vapour',
    unit: 'J/kg',
    valid: '0 to 200 °C',
    source: fitted,
    mark: 'derived',
    example: '--temperature 100C',
    inputs: { temperature: temperature('water temperature', 0, 200) },
    compute: ({ temperature: t }) => giveShare(latentHeatJPerKg(t), 1e-4, found),
  }),
  entry({
    name: 'steam-heat',
    meaning: 'heat that turns the water of a hot syrup into steam of kitchen pressure, without the heat that binds it',
    unit: 'J/kg',
    valid: '0 to 200 °C',
    source: `${fitted}, superheated steam at 101.325 kPa`,
    mark: 'derived',
    example: '--temperature 140C',
    inputs: { temperature: temperature('syrup temperature', 0, 200) },
    compute: ({ temperature: t }) =>
      giveShare(steamEnthalpyAtAtmosphericJPerKg(t) - liquidEnthalpyJPerKg(t), 1e-3, found),
  }),
  entry({
    name: 'water-heat-capacity',
    meaning: 'heat capacity of saturated liquid water',
    unit: 'J/(kg.K)',
    valid: '0 to 200 °C',
    source: fitted,
    mark: 'derived',
    example: '--temperature 90C',
    inputs: { temperature: temperature('water temperature', 0, 200) },
    compute: ({ temperature: t }) => giveShare(liquidHeatCapacityJPerKgK(t), 5e-4, found),
  }),
  entry({
    name: 'water-enthalpy',
    meaning: 'heat content of liquid water above that at 0 °C',
    unit: 'J/kg',
    valid: '0 to 200 °C',
    source: 'integral of the heat capacity',
    mark: 'derived',
    example: '--temperature 130C',
    inputs: { temperature: temperature('water temperature', 0, 200) },
    compute: ({ temperature: t }) => giveShare(liquidEnthalpyJPerKg(t), 1.1e-3, found),
  }),
  entry({
    name: 'water-density',
    meaning: 'density of saturated liquid water',
    unit: 'kg/m3',
    valid: '0 to 373 °C, within 0.01 % to 200 °C',
    source: `${wagnerPruss}, eq. 2`,
    mark: 'from memory',
    example: '--temperature 20C',
    inputs: { temperature: temperature('water temperature', 0, 373) },
    compute: ({ temperature: t }) => giveShare(liquidDensityKgPerM3(t), t <= 200 ? 1e-4 : 1e-3, toldTo200(t)),
  }),
  entry({
    name: 'water-pk',
    meaning: 'ion product of water, as -log10',
    unit: '1',
    valid: '0 to 200 °C',
    source: 'IAPWS R11-07, eqs 3-5',
    mark: 'from memory',
    example: '--temperature 130C',
    inputs: { temperature: temperature('water temperature', 0, 200) },
    compute: ({ temperature: t }) => give(waterPk(t), 0.05, 'error assumed'),
  }),
  entry({
    name: 'pressure',
    meaning: 'air pressure at an altitude',
    unit: 'Pa',
    valid: '-500 to 11,000 m',
    source: 'ISO 2533:1975 standard atmosphere, in the rounded form of the ASHRAE Handbook',
    mark: 'seen',
    example: '--altitude 800m',
    inputs: { altitude: quantity('length', 'altitude above sea level, such as 800m', 'm', [-500, 11_000]) },
    compute: ({ altitude }) => ({
      ...give(pressureAtAltitudePa(altitude), 2000, 'what the weather does'),
      note: 'a barometer at your place knows better',
    }),
  }),
];
