/**
 * Units as data: how people spell them, their UCUM code for the wire, and `core value = number * factor + offset` in the
 * unit that the core computes in (`dimensions`). Inch, pound and gallons are exact by definition, so their family is too.
 * Codes: Unified Code for Units of Measure 2.1 (from memory).
 */
import type { Dimension } from './dimension.ts';

interface UnitFacts {
  /** How it is shown after a number, where that is not its name. */
  readonly symbol?: string;
  /** Further spellings, parted by `|`; case matters only where it tells two units of a dimension apart. */
  readonly spelled: string;
  /** Absent where UCUM has no code of that size. */
  readonly ucum?: string;
  readonly factor: number;
  readonly offset?: number;
  readonly source: string;
}

const SI = 'SI Brochure, 9th ed. (2019)';
const HB44 = 'NIST Handbook 44, App. C: exact by definition of the inch and the pound (from memory)';
const IMPERIAL = 'UK Weights and Measures Act 1985, sch. 1: gallon 4.546 09 L exactly (from memory)';
const SP811 = 'NIST SP 811 (2008), App. B.8';
const DEGREES = 'definitions: chalk in water, 1 dH as 10 mg/L of CaO (seen quoted, sizes.com and others; molar masses)';
const SPOONS = 'common kitchen practice, 5 / 15 / 250 mL; Australian tablespoon 20 mL (from memory)';

const inchM = 0.0254;
const poundKg = 0.453_592_37;
const standardGravity = 9.806_65;
const usGallonM3 = 231 * inchM ** 3;
const imperialGallonM3 = 4.546_09e-3;
/** Mercury of 13 595.1 kg/m3 under standard gravity: the conventional millimetre. */
const mmHgPa = 13_595.1 * standardGravity * 1e-3;
/** Molar masses of chalk and lime, g/mol. */
const [chalk, lime] = [100.087, 56.077];
const grainMg = (poundKg * 1e6) / 7000;
/** International Table BTU. */
const btuJ = 1055.055_852_62;

export const units = {
  mass: {
    g: { spelled: 'gram|grams|gr', ucum: 'g', factor: 1e-3, source: SI },
    kg: { spelled: 'kilo|kilos|kilogram|kilograms', ucum: 'kg', factor: 1, source: SI },
    mg: { spelled: 'milligram|milligrams', ucum: 'mg', factor: 1e-6, source: SI },
    lb: { spelled: 'lbs|pound|pounds', ucum: '[lb_av]', factor: poundKg, source: HB44 },
    oz: { spelled: 'ounce|ounces', ucum: '[oz_av]', factor: poundKg / 16, source: HB44 },
  },
  volume: {
    mL: { spelled: 'cc|millilitre|millilitres|milliliter|milliliters', ucum: 'mL', factor: 1e-6, source: SI },
    L: { spelled: 'litre|litres|liter|liters', ucum: 'L', factor: 1e-3, source: SI },
    m3: { symbol: 'm³', spelled: 'cubic metre|cubic metres', ucum: 'm3', factor: 1, source: SI },
    tsp: { spelled: 'tsps|teaspoon|teaspoons|us tsp', ucum: '[tsp_us]', factor: usGallonM3 / 768, source: HB44 },
    tbsp: { spelled: 'tbsps|tablespoon|tablespoons|us tbsp', ucum: '[tbs_us]', factor: usGallonM3 / 256, source: HB44 },
    'fl oz': { spelled: 'floz|fluid ounce|fluid ounces', ucum: '[foz_us]', factor: usGallonM3 / 128, source: HB44 },
    cup: { spelled: 'cups|us cup|us cups', ucum: '[cup_us]', factor: usGallonM3 / 16, source: HB44 },
    pint: { spelled: 'pints|pt|us pint|us pints', ucum: '[pt_us]', factor: usGallonM3 / 8, source: HB44 },
    qt: { spelled: 'quart|quarts|us qt', ucum: '[qt_us]', factor: usGallonM3 / 4, source: HB44 },
    gal: { spelled: 'gallon|gallons|us gal', ucum: '[gal_us]', factor: usGallonM3, source: HB44 },
    'imp fl oz': {
      spelled: 'imperial fl oz|uk fl oz',
      ucum: '[foz_br]',
      factor: imperialGallonM3 / 160,
      source: IMPERIAL,
    },
    'imp pint': {
      spelled: 'imp pints|imperial pint|imperial pints|uk pint|uk pints',
      ucum: '[pt_br]',
      factor: imperialGallonM3 / 8,
      source: IMPERIAL,
    },
    'imp gal': {
      spelled: 'imperial gallon|imperial gallons|uk gal',
      ucum: '[gal_br]',
      factor: imperialGallonM3,
      source: IMPERIAL,
    },
    'metric tsp': { spelled: 'metric teaspoon|metric teaspoons|au tsp', ucum: '[tsp_m]', factor: 5e-6, source: SPOONS },
    'metric tbsp': { spelled: 'metric tablespoon|metric tablespoons', ucum: '[tbs_m]', factor: 15e-6, source: SPOONS },
    'metric cup': { spelled: 'metric cups|au cup', factor: 250e-6, source: SPOONS },
    'au tbsp': { spelled: 'au tablespoon|australian tbsp|australian tablespoon', factor: 20e-6, source: SPOONS },
  },
  temperature: {
    C: { symbol: '°C', spelled: 'celsius', ucum: 'Cel', factor: 1, source: SI },
    F: { symbol: '°F', spelled: 'fahrenheit', ucum: '[degF]', factor: 5 / 9, offset: -160 / 9, source: SP811 },
    K: { spelled: 'kelvin', ucum: 'K', factor: 1, offset: -273.15, source: SI },
  },
  temperatureDifference: {
    'C difference': { symbol: '°C', spelled: 'celsius', factor: 1, source: SI },
    'F difference': { symbol: '°F', spelled: 'fahrenheit', factor: 5 / 9, source: SP811 },
    'K difference': { symbol: 'K', spelled: 'kelvin', ucum: 'K', factor: 1, source: SI },
  },
  duration: {
    s: { spelled: 'sec|secs|second|seconds', ucum: 's', factor: 1, source: SI },
    min: { spelled: 'm|mins|minute|minutes', ucum: 'min', factor: 60, source: SI },
    h: { spelled: 'hr|hrs|hour|hours', ucum: 'h', factor: 3600, source: SI },
    d: { spelled: 'day|days', ucum: 'd', factor: 86_400, source: SI },
  },
  length: {
    mm: { spelled: 'millimetre|millimetres|millimeter|millimeters', ucum: 'mm', factor: 1e-3, source: SI },
    cm: { spelled: 'centimetre|centimetres|centimeter|centimeters', ucum: 'cm', factor: 1e-2, source: SI },
    m: { spelled: 'metre|metres|meter|meters', ucum: 'm', factor: 1, source: SI },
    in: { spelled: 'inch|inches|"|″', ucum: '[in_i]', factor: inchM, source: HB44 },
    ft: { spelled: "foot|feet|'|′", ucum: '[ft_i]', factor: 12 * inchM, source: HB44 },
  },
  pressure: {
    Pa: { spelled: 'pascal|pascals', ucum: 'Pa', factor: 1, source: SI },
    hPa: { spelled: 'hectopascal', ucum: 'hPa', factor: 100, source: SI },
    kPa: { spelled: 'kilopascal', ucum: 'kPa', factor: 1000, source: SI },
    mbar: { spelled: 'mb|millibar|millibars', ucum: 'mbar', factor: 100, source: SP811 },
    bar: { spelled: 'bars', ucum: 'bar', factor: 1e5, source: SP811 },
    psi: {
      spelled: 'pound per square inch',
      ucum: '[psi]',
      factor: (poundKg * standardGravity) / inchM ** 2,
      source: SP811,
    },
    inHg: { spelled: 'in hg|inches of mercury', ucum: "[in_i'Hg]", factor: 25.4 * mmHgPa, source: SP811 },
    mmHg: { spelled: 'mm hg|torr', ucum: 'mm[Hg]', factor: mmHgPa, source: SP811 },
  },
  power: {
    W: { spelled: 'watt|watts', ucum: 'W', factor: 1, source: SI },
    kW: { spelled: 'kilowatt|kilowatts', ucum: 'kW', factor: 1000, source: SI },
    'BTU/h': { spelled: 'btu/hr|btuh|btu per hour', ucum: '[Btu_IT]/h', factor: btuJ / 3600, source: SP811 },
  },
  energy: {
    J: { spelled: 'joule|joules', ucum: 'J', factor: 1, source: SI },
    kJ: { spelled: 'kilojoule|kilojoules', ucum: 'kJ', factor: 1000, source: SI },
    kWh: { spelled: 'kw h', ucum: 'kW.h', factor: 3.6e6, source: SI },
  },
  fraction: {
    '%': { spelled: 'percent|per cent|pct', ucum: '%', factor: 1e-2, source: SI },
    one: { symbol: 'of one', spelled: 'as a share', ucum: '1', factor: 1, source: SI },
  },
  hardness: {
    'mg/L': { spelled: 'ppm|mg/l caco₃|mg/l as caco₃', ucum: 'mg/L', factor: 1, source: DEGREES },
    dH: { symbol: '°dH', spelled: 'dgh|dkh', factor: (10 * chalk) / lime, source: DEGREES },
    fH: { symbol: '°fH', spelled: 'f|tf|french degrees', factor: 10, source: DEGREES },
    Clark: {
      symbol: '°Clark',
      spelled: 'e|english degrees',
      factor: grainMg / (1000 * imperialGallonM3),
      source: DEGREES,
    },
    gpg: { spelled: 'grains per gallon|gr/gal', factor: grainMg / (1000 * usGallonM3), source: DEGREES },
    'meq/L': { spelled: 'mval/l', ucum: 'meq/L', factor: chalk / 2, source: DEGREES },
  },
  ph: {
    pH: { spelled: 'ph', ucum: '[pH]', factor: 1, source: SI },
  },
} as const satisfies Record<Dimension, Record<string, UnitFacts>>;

export type UnitOf<D extends Dimension> = D extends Dimension ? keyof (typeof units)[D] : never;
export type UnitName = UnitOf<Dimension>;

export interface Unit {
  readonly name: UnitName;
  readonly dimension: Dimension;
  readonly symbol: string;
  readonly spellings: readonly string[];
  readonly ucum: string | undefined;
  readonly factor: number;
  readonly offset: number;
  readonly source: string;
}

export const allUnits: readonly Unit[] = (Object.keys(units) as Dimension[]).flatMap((dimension) =>
  Object.entries<UnitFacts>(units[dimension]).map(
    ([name, { symbol = name, spelled, ucum, factor, offset = 0, source }]) => ({
      name: name as UnitName,
      dimension,
      symbol,
      spellings: [symbol, ...spelled.split('|')],
      ucum,
      factor,
      offset,
      source,
    }),
  ),
);
