/** The kitchen: a kit from a file, and options that change single parts of it. */
import { keptThrough } from '../../core/learn/forget.ts';
import { type Kit, kitRanges as ranges } from '../../core/pan/kit.ts';
import { writtenNumber } from '../../core/units/writtenNumber.ts';
import { type Given, type Input, number, optional, quantity, readAll, type Texts, word } from '../input.ts';

const materials = ['stainless', 'enamel', 'copper', 'castIron', 'aluminium', 'unknownCoating'] as const;

const notches: Input<number> = number('highest number on the dial', ranges.notches);

/** A bare number is in mg/L as CaCO3; degrees are named. */
function asChalk(meaning: string, range: readonly [number, number]): Input<number> {
  const bare = number(meaning, range, 'mg/L as CaCO3');
  const named = quantity('hardness', `${meaning}, mg/L as CaCO3, or such as 10dH`, 'mg/L', range);
  return {
    ...named,
    read: (text, flag) => (typeof writtenNumber(text) === 'number' ? bare : named).read(text, flag),
  };
}

export const kitInputs = {
  stove: optional(word('kind of stove', ['gas', 'coil', 'ceramic', 'induction'])),
  power: optional(quantity('power', "the ring's rated power, such as 1800W", 'W', ranges.ratedPowerW)),
  notches: optional(notches),
  pan: optional(quantity('length', 'inside diameter of the pan, such as 20cm', 'cm', ranges.diameterM)),
  panHeight: optional(quantity('length', 'its inside height', 'cm', ranges.heightM)),
  panMass: optional(quantity('mass', 'mass of the empty pan, such as 900g', 'g', ranges.panMassKg)),
  material: optional(word('of the pan', materials)),
  thermometer: optional(word('kind of thermometer', ['digital', 'dial'])),
  spoon: optional(quantity('volume', 'spoon for cold water, such as 1tsp', 'mL', ranges.spoonM3)),
  alkalinity: optional(asChalk('alkalinity of your water', ranges.alkalinityMgPerL)),
  hardness: optional(asChalk('its hardness, where known', ranges.hardnessMgPerL)),
  altitude: optional(quantity('length', 'altitude of the kitchen, such as 800m', 'm', ranges.altitudeM)),
  room: optional(quantity('temperature', 'room temperature', 'C', ranges.roomC)),
};

/** The kit with the parts that options name changed; what was learned of such a part is left out. */
export function kitFrom(base: Kit, texts: Texts): Kit {
  const given: Given<typeof kitInputs> = readAll(kitInputs, texts);
  const { stove, pan, water } = base;
  const hardnessMgPerL = given.hardness ?? water.hardnessMgPerL;
  const changed: Kit = {
    name: base.name,
    stove: {
      kind: given.stove ?? stove.kind,
      ratedPowerW: given.power ?? stove.ratedPowerW,
      notches: given.notches ?? stove.notches,
    },
    pan: {
      material: given.material ?? pan.material,
      diameterM: given.pan ?? pan.diameterM,
      heightM: given.panHeight ?? pan.heightM,
      massKg: given.panMass ?? pan.massKg,
    },
    thermometer: { kind: given.thermometer ?? base.thermometer.kind },
    spoonM3: given.spoon ?? base.spoonM3,
    water: {
      alkalinityMgPerL: given.alkalinity ?? water.alkalinityMgPerL,
      ...(hardnessMgPerL !== undefined && { hardnessMgPerL }),
    },
    altitudeM: given.altitude ?? base.altitudeM,
    roomC: given.room ?? base.roomC,
  };
  return keptThrough(base, changed);
}
