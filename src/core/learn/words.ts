/** How what was learned, and what can't be learned from, is said: to a page and to a terminal. */
import type { KitchenNumber, Telling } from './changes.ts';
import type { CheckKind } from './checks/check.ts';
import type { Fault, FaultKind } from './faults.ts';
import type { Thing } from './forget.ts';

export interface NumberWords {
  readonly name: string;
  /** After the figure; nothing for a factor. */
  readonly unit: string;
  readonly scale: number;
  readonly digits: number;
}

/** Each number of the kitchen that is shown, and the thing that it belongs to. */
export const numberWords: Readonly<Record<KitchenNumber, NumberWords & { readonly of: Thing }>> = {
  stoveEfficiency: { of: 'stove', name: 'Rated power that reaches the pan', unit: '%', scale: 100, digits: 1 },
  stoveLagS: { of: 'stove', name: 'Lag of the ring', unit: 's', scale: 1, digits: 0 },
  lossFactor: { of: 'pan', name: 'Heat loss, times the usual', unit: '', scale: 1, digits: 2 },
  evaporationFactor: { of: 'pan', name: 'Drying below the boil, times the usual', unit: '', scale: 1, digits: 2 },
  surfaceRenewalS: { of: 'pan', name: 'Stirring renews the surface after', unit: 's', scale: 1, digits: 1 },
  thickFilm: { of: 'pan', name: 'Heat into thick syrup', unit: 'W/(m²·K)', scale: 1, digits: 0 },
  thermometerOffsetC: { of: 'thermometer', name: 'Thermometer shows more by', unit: 'K', scale: 1, digits: 2 },
  thermometerLagS: { of: 'thermometer', name: 'Lag of the thermometer', unit: 's', scale: 1, digits: 1 },
  spoonFactor: { of: 'spoon', name: 'Spoonful, times what it should hold', unit: '', scale: 1, digits: 2 },
  boilingTheta: { of: 'sugar', name: 'Boiling curve, of the published spread', unit: '', scale: 1, digits: 2 },
  inversionRate130: { of: 'sugar', name: 'Inversion at 130 °C', unit: 'L/(mol·min)', scale: 1, digits: 0 },
  pigmentFirst: { of: 'sugar', name: 'Browning, first order', unit: '1/min', scale: 1, digits: 4 },
  pigmentSecond: { of: 'sugar', name: 'Browning, second order', unit: 'L/(mol·min)', scale: 1, digits: 4 },
  absorptivity420: { of: 'sugar', name: 'Colour of the pigment', unit: 'L/(mmol·cm)', scale: 1, digits: 2 },
};

/** A value as it is written, without its unit. */
export const figureOf = ({ scale, digits }: NumberWords, value: number): string => (value * scale).toFixed(digits);

export const tellingWords: Readonly<Record<Telling, string>> = {
  boilingWater: 'a boiling-water check of the thermometer',
  lag: 'a lag check: the thermometer plunged into hot water',
  heating: 'a water-heating test',
  spoons: 'weighing ten spoonfuls',
  spoonTests: 'spoon tests against the swatches, or a weighed dilution of the finished sugar',
  weighing: 'weighing pan and contents, and a dilution by refractometer',
};

export const checkWords: Readonly<Record<CheckKind, string>> = {
  boilingWater: 'Boiling water',
  ice: 'Ice point',
  lag: 'Lag of the thermometer',
  spoons: 'Ten spoonfuls',
  heating: 'Water heating',
  dial: 'Settings of the dial',
};

const faultWords: Readonly<Record<FaultKind, string>> = {
  notBegun: 'the log does not say how the cook began',
  rehearsal: 'it is a rehearsal: no real stove is behind it',
  twoCooks: 'there is more than one cook in it: learn from each alone',
  otherKit: 'it was cooked with another stove, pan, thermometer or spoon than this kit has',
  alreadyLearned: 'this kit has learned from it already',
  noHeat: 'no setting of the dial was noted, so the stove can’t be told from the readings',
  tooFew: 'there are too few readings: it takes 20 and a quarter of an hour',
  wrongUnit: 'the readings change their unit: say in the cook’s log what the thermometer really showed',
  probeOut: 'the readings fall faster than a pan can cool: the probe was out of the pan; strike those readings out',
  stuck: 'the thermometer shows one and the same value while the pan can’t have stood still: strike those readings out',
  gap: 'there is no reading for more than ten minutes: what was done then may not have been noted either',
};

export function faultText({ kind, timeS, values }: Fault): string {
  if (timeS === null) return faultWords[kind];
  const shown = values.map((value) => value.toFixed(1)).join(', then ');
  return `${faultWords[kind]} (at ${clock(timeS)}${shown && `: ${shown} °C`})`;
}

/** Hours, minutes and seconds into the cook. */
function clock(timeS: number): string {
  const two = (value: number) => String(Math.floor(value)).padStart(2, '0');
  return `${Math.floor(timeS / 3600)}:${two((timeS / 60) % 60)}:${two(timeS % 60)}`;
}
