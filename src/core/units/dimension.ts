/** What kinds of quantity a person may be asked for, the SI-based unit the core holds each in, and how to ask for one. */

interface DimensionFacts {
  /** How messages call it. */
  readonly label: string;
  /** UCUM code of the unit that the core computes in. */
  readonly coreUcum: string;
  /** No quantity of this kind lies below this, in the core's unit. */
  readonly lowest: number;
  /** Whether people write it in several units at once: `1h20min`, `2 lb 3 oz`. */
  readonly compound: boolean;
  /** Shown when an entry is not understood. */
  readonly example: string;
}

export const dimensions = {
  mass: { label: 'mass', coreUcum: 'kg', lowest: 0, compound: true, example: 'a mass such as 500g, 1.1lb or 3 oz' },
  volume: {
    label: 'volume',
    coreUcum: 'm3',
    lowest: 0,
    compound: true,
    example: 'a volume such as 250mL, 2 tsp or 1/2 cup',
  },
  temperature: {
    label: 'temperature',
    coreUcum: 'Cel',
    lowest: -273.15,
    compound: false,
    example: 'a temperature such as 135C or 275F',
  },
  temperatureDifference: {
    label: 'temperature difference',
    coreUcum: 'K',
    lowest: Number.NEGATIVE_INFINITY,
    compound: false,
    example: 'a temperature difference such as 5C, 9F or 5K',
  },
  duration: {
    label: 'duration',
    coreUcum: 's',
    lowest: 0,
    compound: true,
    example: 'a duration such as 25min, 90s or 1h20min',
  },
  // Altitudes may lie below the sea.
  length: {
    label: 'length',
    coreUcum: 'm',
    lowest: Number.NEGATIVE_INFINITY,
    compound: true,
    example: 'a length such as 20cm, 8in or 300 m',
  },
  pressure: {
    label: 'pressure',
    coreUcum: 'Pa',
    lowest: 0,
    compound: false,
    example: 'a pressure such as 1013hPa or 29.9 inHg',
  },
  power: {
    label: 'power',
    coreUcum: 'W',
    lowest: 0,
    compound: false,
    example: 'a power such as 1800W, 1.8kW or 6000 BTU/h',
  },
  energy: { label: 'energy', coreUcum: 'J', lowest: 0, compound: false, example: 'an energy such as 500kJ or 0.4kWh' },
  fraction: { label: 'fraction', coreUcum: '1', lowest: 0, compound: false, example: 'a share such as 3% or 12.5 %' },
  // Of water: hardness and alkalinity both are counted as the chalk they come to.
  hardness: {
    label: 'hardness',
    coreUcum: 'mg/L',
    lowest: 0,
    compound: false,
    example: 'mg/L as CaCO3 such as 180 mg/L, or degrees such as 10 dH or 18 fH',
  },
  ph: { label: 'pH', coreUcum: '[pH]', lowest: -2, compound: false, example: 'a pH such as pH 5.2' },
} as const satisfies Record<string, DimensionFacts>;

export type Dimension = keyof typeof dimensions;
