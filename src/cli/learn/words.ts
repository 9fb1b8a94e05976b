/** How what was learned, and what can't be learned from, is said. */

import type { KitchenNumber, Telling } from '../../core/learn/changes.ts';
import type { Fault, FaultKind } from '../../core/learn/faults.ts';
import { kitchenShown, type Shown } from '../cook/kitchenShown.ts';

export const shownAs: Readonly<Record<KitchenNumber, Shown>> = {
  ...kitchenShown,
  evaporationFactor: {
    label: 'drying below the boil, times the usual',
    key: 'evaporation_factor',
    scale: 1,
    digits: 2,
  },
  surfaceRenewalS: { label: 'stirring renews the surface after s', key: 'surface_renewal_s', scale: 1, digits: 1 },
  thickFilm: { label: 'heat into thick syrup W/(m²K)', key: 'thick_film_W/(m2.K)', scale: 1, digits: 0 },
  boilingTheta: { label: 'boiling curve, of the published spread', key: 'boiling_theta', scale: 1, digits: 2 },
  inversionRate130: { label: 'inversion at 130 °C', key: 'inversion_rate_130', scale: 1, digits: 4 },
  pigmentFirst: { label: 'browning, first stage', key: 'pigment_first', scale: 1, digits: 5 },
  pigmentSecond: { label: 'browning, second stage', key: 'pigment_second', scale: 1, digits: 5 },
  absorptivity420: { label: 'colour of the pigment', key: 'absorptivity_420', scale: 1, digits: 1 },
};

export const tellings: Readonly<Record<Telling, string>> = {
  boilingWater: 'a boiling-water check of the thermometer',
  lag: 'a lag check: the thermometer plunged into hot water',
  heating: 'a water-heating test',
  spoons: 'weighing ten spoonfuls',
  spoonTests: 'spoon tests against the swatches, or a weighed dilution of the finished sugar',
  weighing: 'weighing pan and contents, and a dilution by refractometer',
};

const faultWords: Readonly<Record<FaultKind, string>> = {
  notBegun: 'the log does not say how the cook began',
  rehearsal: 'it is a rehearsal: no real stove is behind it (--rehearsal to try it all the same)',
  twoCooks: 'there is more than one cook in it: learn from each alone',
  otherKit: 'it was cooked with another stove, pan, thermometer or spoon than this kit has',
  alreadyLearned: 'this kit has learned from it already (--forget all begins anew)',
  noHeat: 'no setting of the dial was noted, so the stove can’t be told from the readings',
  tooFew: 'there are too few readings: it takes 20 and a quarter of an hour',
  wrongUnit: 'the readings change their unit: say in the cook’s log what the thermometer really showed',
  probeOut: 'the readings fall faster than a pan can cool: the probe was out of the pan; strike those readings out',
  gap: 'there is no reading for more than ten minutes: what was done then may not have been noted either',
};

export function faultText({ kind, timeS, values }: Fault): string {
  const where =
    timeS === null
      ? ''
      : ` (at ${clock(timeS)}${values.length > 0 ? `: ${values.map((value) => value.toFixed(1)).join(', then ')} °C` : ''})`;
  return `${faultWords[kind]}${where}`;
}

/** Hours, minutes and seconds into the cook. */
function clock(timeS: number): string {
  const two = (value: number) => String(Math.floor(value)).padStart(2, '0');
  return `${Math.floor(timeS / 3600)}:${two((timeS / 60) % 60)}:${two(timeS % 60)}`;
}
